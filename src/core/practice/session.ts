import type { DrillPast, Prompt } from './drill.ts';
import type { Diagnosis } from './fault.ts';
import type { Attempt, KnownRoute, SessionLog } from './session-log.ts';

/** What is done with the hands: keys that are laid onto the board, or a real board that sends results. */
export type PracticeInput = 'engine' | 'board';

/** A session as it is kept: plain data that can be taken up again in the middle of a prompt. */
export interface Session extends SessionLog {
  readonly id: string;
  /** For the drills, in [0, 1). */
  readonly seed: number;
  /** How long it is to last, minutes. */
  readonly minutes: number;
  readonly input: PracticeInput;
  /** ms since 1970; null while it goes on. */
  readonly endedAt: number | null;
  readonly prompts: readonly Prompt[];
  /** Where in the last prompt the typist is; its length when it is done. */
  readonly position: number;
  /** What has gone wrong at this position so far. */
  readonly slip: Diagnosis | null;
  /** A hint has been shown at this position. */
  readonly hinted: boolean;
}

/** A session that has not asked for anything yet. */
export function newSession(about: Pick<Session, 'id' | 'seed' | 'minutes' | 'input' | 'startedAt'>): Session {
  return {
    ...about,
    activeMs: 0,
    endedAt: null,
    attempts: [],
    routes: {},
    prompts: [],
    position: 0,
    slip: null,
    hinted: false,
  };
}

/** The need that is asked for now, as a keymap writes it; null between prompts. */
export function wantedNeed(session: Session): string | null {
  return session.prompts.at(-1)?.needs[session.position] ?? null;
}

/** Puts the next prompt on. */
export function withPrompt(session: Session, prompt: Prompt): Session {
  return { ...session, prompts: [...session.prompts, prompt], position: 0, slip: null, hinted: false };
}

/** Leaves the rest of the last prompt out. */
export function withoutRest(session: Session): Session {
  const position = session.prompts.at(-1)?.needs.length ?? 0;
  return position === session.position ? session : { ...session, position, slip: null, hinted: false };
}

/** A wrong press: the need stays asked for, and this try is lost. What went wrong at this position so far is replaced. */
export function withSlip(session: Session, slip: Diagnosis): Session {
  return { ...session, slip };
}

/** A hint is on the board. */
export function withHint(session: Session): Session {
  return session.hinted ? session : { ...session, hinted: true };
}

/** Time that went by with a prompt on the page, ms. */
export function withTime(session: Session, ms: number): Session {
  return { ...session, activeMs: session.activeMs + ms };
}

/**
 * The need was given. tookMs: since what was given before it, or since a prompt of one need was shown; it counts only for a
 * first try without a hint, and not for the first need of a longer prompt, where the reading is in it.
 */
export function withDone(session: Session, at: number, tookMs: number | null, route: KnownRoute): Session {
  const prompt = session.prompts.at(-1);
  const need = wantedNeed(session);
  if (prompt === undefined || need === null) return session;
  const { slip, hinted, position } = session;
  const isTimed = slip === null && !hinted && (position > 0 || prompt.needs.length === 1);
  const attempt: Attempt = {
    need,
    at,
    right: slip === null,
    ms: isTimed ? tookMs : null,
    hinted,
    diagnosis: slip,
  };
  return {
    ...session,
    attempts: [...session.attempts, attempt],
    routes: { ...session.routes, [need]: route },
    position: position + 1,
    slip: null,
    hinted: false,
  };
}

/** Whether its time is over; a prompt that has been begun is still finished. */
export function isOver({ activeMs, minutes, prompts, position }: Session): boolean {
  const isBetween = position >= (prompts.at(-1)?.needs.length ?? 0);
  return isBetween && activeMs >= minutes * 60_000;
}

/** What the drills go by. */
export function pastOf({ prompts, attempts }: Session): DrillPast {
  const tries = new Map<string, boolean[]>();
  for (const { need, right } of attempts) {
    const list = tries.get(need);
    if (list === undefined) tries.set(need, [right]);
    else list.push(right);
  }
  return { prompts, tries };
}
