import type { HostLayout, HostOutput, Stroke } from '../host/host-layout.ts';

/** Letters, marks, digits, and what stands inside words: our choice of signs. */
const OF_A_WORD = /^[\p{L}\p{M}\p{Nd}_'’-]+$/u;

/** What the host makes of a stroke by its own modifiers; null where they are more than Shift and level 3. */
function outputOf({ code, with: around }: Stroke, host: HostLayout, moreShift: boolean): HostOutput | null {
  let shift = moreShift;
  let level3 = false;
  for (const modifier of around) {
    if (modifier === 'ShiftLeft' || modifier === 'ShiftRight') shift = true;
    else if (modifier === host.level3) level3 = true;
    else return null;
  }
  return host.outputOf(code, { shift, level3, caps: false });
}

/** A10: whether a stroke goes on with a word: what words are made of, a dead key, or Backspace by itself. */
export function continuesWord(stroke: Stroke, host: HostLayout): boolean {
  if (stroke.code === 'Backspace') return stroke.with.length === 0;
  const output = outputOf(stroke, host, false);
  if (output === null || output.kind === 'none') return false;
  return output.kind === 'dead' || OF_A_WORD.test(output.char);
}

/** A10: whether Shift makes the stroke's letter its capital. */
export function isCapitalised(stroke: Stroke, host: HostLayout): boolean {
  const small = outputOf(stroke, host, false);
  const large = outputOf(stroke, host, true);
  if (small?.kind !== 'char' || large?.kind !== 'char' || small.char === large.char) return false;
  return /^\p{L}/u.test(small.char) && small.char.toUpperCase() === large.char;
}
