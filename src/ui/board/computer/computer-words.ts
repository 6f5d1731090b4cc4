import { codeLabel, codeName } from '../../../core/host/code-names.ts';
import { readsAlike } from '../../../core/host/computer-verdict.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { Probe } from '../../../core/host/tell-apart.ts';
import type { Code } from '../../../core/keymap/codes.ts';
import type { Candidate } from '../../../store/computer/candidates.ts';

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

/** The layout that a design is for. */
export interface DesignLayout {
  readonly title: string;
  readonly host: HostLayout;
}

/** What the layouts left over by presses come to, against the design's; those that presses cannot tell apart are named. */
export function leftWords(left: readonly Candidate[], design: DesignLayout): string {
  const alike = left.filter(({ host }) => readsAlike(design.host, host));
  const [only, ...more] = left;
  if (only === undefined)
    return `This computer is on none of the layouts that come with this page, and not on ${design.title}, which the design is for: ${OTHERWISE}`;
  const where =
    more.length === 0 ? only.title : `one of these, which presses cannot tell apart: ${listed(left)}`;
  if (alike.length === 0)
    return `This computer is on ${where}; the design is for ${design.title}: ${OTHERWISE}`;
  if (alike.length < left.length)
    return `This computer is on ${where}. Characters come as the design has them only if it is ${listed(alike)}.`;
  if (only.host === design.host && more.length === 0)
    return `This computer is on ${where}, as the design has it.`;
  const what = more.length === 0 ? 'It reads' : 'Each reads';
  return `This computer is on ${where}. ${what} what the design types as ${design.title} does.`;
}

/** What to do about another layout. */
export const OTHERWISE =
  'characters will come otherwise. Set the computer to that layout, or change the design’s host.';

/** So many layouts are named in full. */
const MOST_NAMED = 6;

function listed(layouts: readonly Candidate[]): string {
  const names = layouts.slice(0, MOST_NAMED).map(({ title }) => title);
  const rest = layouts.length - names.length;
  return rest > 0 ? `${names.join(', ')} and ${rest} more` : names.join(', ');
}
