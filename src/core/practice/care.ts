import type { SessionLog } from './session-log.ts';

/** Posture in one line: common practice, no source. */
export const POSTURE_WORDS =
  'Shoulders loose, wrists straight and not propped up while typing, elbows about at the height of the keys.';

/**
 * Breaks: field studies of the National Institute for Occupational Safety and Health found less discomfort at no loss of
 * output with five minutes more of break in each hour (Galinsky and others, Ergonomics 43, 2000; American Journal of
 * Industrial Medicine 50, 2007).
 */
export const BREAK_WORDS =
  'Five minutes of break in each hour of keyboard work: in field studies of data-entry work (NIOSH, 2000 and 2007) that meant less discomfort at no loss of output.';

const HOUR_MS = 60 * 60 * 1000;
/** A gap as long as this is a break, ms. */
const BREAK_MS = 5 * 60 * 1000;
/** Practice without a break, after which one is proposed, ms: our own choice, well inside the hour. */
const PRACTICE_MS = 20 * 60 * 1000;

/** When practice went on, ms since 1970. */
export interface Spell {
  readonly from: number;
  readonly to: number;
}

/**
 * Whether a break is to be proposed: twenty minutes or more of practice in the last hour since the last gap of five minutes.
 * What was typed elsewhere is not seen.
 */
export function isBreakDue(spells: readonly Spell[], now: number): boolean {
  let since = now;
  let practised = 0;
  for (const { from, to } of spells.toSorted((one, other) => other.to - one.to)) {
    if (since - to >= BREAK_MS || to < now - HOUR_MS) break;
    practised += Math.max(0, Math.min(to, since) - Math.max(from, now - HOUR_MS));
    since = Math.min(since, from);
  }
  return practised >= PRACTICE_MS;
}

/** When there was practice, from what was typed: presses with less than a break between them belong together. */
export function spellsOf(sessions: readonly SessionLog[]): readonly Spell[] {
  const spells: Spell[] = [];
  for (const { startedAt, attempts } of sessions) {
    for (const { at } of attempts) {
      const last = spells.at(-1);
      if (last !== undefined && at - last.to < BREAK_MS && last.from >= startedAt) {
        spells[spells.length - 1] = { from: last.from, to: at };
      } else spells.push({ from: at, to: at });
    }
  }
  return spells;
}
