/** How many slips: "no slip", "1 slip", "5 slips". */
export function countWords(slips: number): string {
  if (slips === 0) return 'No slip: everything came as it was meant.';
  return slips === 1 ? '1 slip' : `${slips} slips`;
}
