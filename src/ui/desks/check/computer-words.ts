import { codeLabel, codeName } from '../../../core/host/code-names.ts';
import type { Probe } from '../../../core/host/tell-apart.ts';
import type { Code } from '../../../core/keymap/codes.ts';

/** Which key to press, named by where it is on a US keyboard: "Shift + the key that is Y on a US keyboard". */
export function probeWords({ code, shift, level3 }: Probe): string {
  const around = [...(shift ? ['Shift'] : []), ...(level3 ? ['AltGr (Option on a Mac)'] : [])];
  const label = codeLabel(code);
  const key = /^[\w]$/.test(label) ? `the key that is ${label} on a US keyboard` : codeName(code);
  return [...around, key].join(' + ');
}

/** The codes of a probe, modifiers first. */
export function probeCodes({ code, shift, level3 }: Probe): readonly Code[] {
  return [...(shift ? (['ShiftLeft'] as const) : []), ...(level3 ? (['AltRight'] as const) : []), code];
}

/** What the layouts left over come to, against the design's. */
export function leftWords(titles: readonly string[], designTitle: string): string {
  const [only, ...more] = titles;
  if (only === undefined) return 'It is on none of the layouts that come with this page.';
  const among = titles.includes(designTitle);
  if (more.length === 0)
    return among
      ? `It is on ${only}, as the design has it.`
      : `It is on ${only}; the design is for ${designTitle}.`;
  const alike = `${titles.slice(0, 6).join(', ')}${titles.length > 6 ? ` and ${titles.length - 6} more` : ''}`;
  return among
    ? `It is on one of these, which presses cannot tell apart: ${alike}. The design’s is among them.`
    : `It is on one of these, which presses cannot tell apart: ${alike}; the design is for ${designTitle}.`;
}
