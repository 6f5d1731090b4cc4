import type { Token } from '../../../core/rehearse/shown-text.ts';
import type { Slip } from '../../../core/rehearse/slips.ts';

/** A stretch of what came out: as it was meant, or a slip (perhaps with nothing in it). */
export interface OutPart {
  /** Different for each part of a text. */
  readonly from: string;
  readonly tokens: readonly Token[];
  readonly slip: Slip | null;
}

/** What came out, cut at its slips. */
export function outParts(tokens: readonly Token[], slips: readonly Slip[]): readonly OutPart[] {
  const parts: OutPart[] = [];
  let at = 0;
  // What was meant and what came run in step between slips, so a slip's place follows from the one before.
  let ahead = 0;
  for (const slip of slips) {
    const from = slip.meantFrom + ahead;
    if (from > at) parts.push({ from: `as meant ${at}`, tokens: tokens.slice(at, from), slip: null });
    parts.push({ from: `slip ${slip.meantFrom} ${from}`, tokens: slip.came, slip });
    at = from + slip.came.length;
    ahead = at - slip.meantTo;
  }
  if (at < tokens.length) parts.push({ from: `as meant ${at}`, tokens: tokens.slice(at), slip: null });
  return parts;
}
