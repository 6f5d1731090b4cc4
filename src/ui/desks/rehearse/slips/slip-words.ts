/** How many slips there would be with a setting. */
export function slipsWith(slips: number): string {
  if (slips === 0) return 'leaves no slip';
  return slips === 1 ? 'leaves 1 slip' : `leaves ${slips} slips`;
}

/** How many slips: "no slip", "1 slip", "5 slips". */
export function countWords(slips: number): string {
  if (slips === 0) return 'No slip: everything came as it was meant.';
  return slips === 1 ? '1 slip' : `${slips} slips`;
}
