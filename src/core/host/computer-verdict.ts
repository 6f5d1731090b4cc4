import type { HostLayout, HostOutput, Level } from './host-layout.ts';
import { COMMON_TYPING_CODES } from './typing-codes.ts';

/**
 * How the computer at hand reads keys, against the layout that a design is for. `fits`: as the design has it. `unsure`: it
 * may be otherwise, and no press tells. `other`: otherwise.
 */
export type ComputerVerdict = 'fits' | 'unsure' | 'other';

/** The verdict from the layouts that the computer may be on; none of those that are known is another one too. */
export function computerVerdict(design: HostLayout, left: readonly HostLayout[]): ComputerVerdict {
  const alike = left.filter((host) => readsAlike(design, host)).length;
  if (alike === 0) return 'other';
  return alike === left.length ? 'fits' : 'unsure';
}

/**
 * Whether another layout reads what a design types as the design's own does: the same on all keys that every board for
 * typing has, on every level that the design's layout has. Level 3 of a layout that the design's knows nothing of is of no
 * account.
 */
export function readsAlike(design: HostLayout, other: HostLayout): boolean {
  if (design === other) return true;
  const levels = design.level3 === null ? PLAIN_LEVELS : ALL_LEVELS;
  return levels.every((level) =>
    COMMON_TYPING_CODES.every((code) => {
      const own = design.outputOf(code, level);
      return own.kind === 'none' || isSame(own, other.outputOf(code, level));
    }),
  );
}

const PLAIN_LEVELS: readonly Level[] = [
  { shift: false, level3: false, caps: false },
  { shift: true, level3: false, caps: false },
];
const ALL_LEVELS: readonly Level[] = [
  ...PLAIN_LEVELS,
  { shift: false, level3: true, caps: false },
  { shift: true, level3: true, caps: false },
];

function isSame(one: HostOutput, other: HostOutput): boolean {
  if (one.kind === 'char') return other.kind === 'char' && one.char === other.char;
  return one.kind === other.kind && (one.kind !== 'dead' || other.kind !== 'dead' || one.dead === other.dead);
}
