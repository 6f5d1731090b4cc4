import { createStore, type StoreApi } from 'zustand/vanilla';
import { type AccidentLimits, USUAL_LIMITS } from '../core/findings/accident-limits.ts';
import { READY_TEXTS } from '../core/needs/counts-table.ts';
import type { Person } from '../core/typist/person.ts';
import { isSpeed, personOfSpeed, SPREAD_FACTORS, type Speed, USUAL_SPEED } from '../core/typist/speed.ts';
import type { KeyValue } from './keeping/key-value.ts';

/** Which text is typed: one of the ready ones by its name, or the typist's own. */
export type TextChoice = (typeof READY_TEXTS)[number] | 'own';

/** What can be chosen for a text: one of them, or whichever the open design's languages ask for. */
export type TextWish = TextChoice | 'design';

/** What the typist has chosen about themselves; it is theirs, so it is kept with the browser and not with a design. */
export interface TypistChoices {
  readonly speed: Speed;
  /** See `Person`; of no effect on a measured typist, who has a spread of their own. */
  readonly spreadFactor: number;
  /** Null until one is chosen: then the own text where there is one, else that of the design’s languages. */
  readonly text: TextWish | null;
  /** From where on accidents are worth a finding. */
  readonly limits: AccidentLimits;
}

export interface TypistState extends TypistChoices {
  /** Whose accidents are estimated; the same object for as long as nothing about it changes. */
  readonly person: Person;
  /** The measured typist, where there is one; whoever measures keeps it and hands it in. */
  readonly measured: Person | null;
  /** Takes up what is kept, once. */
  start(): Promise<void>;
  setSpeed(speed: Speed): void;
  setSpread(factor: number): void;
  setText(text: TextWish): void;
  setLimits(limits: Partial<AccidentLimits>): void;
  /** Hands the measured typist in, or takes them away. */
  setMeasured(person: Person | null): void;
}

const KEPT_AS = 'typist';

const USUAL: TypistChoices = { speed: USUAL_SPEED, spreadFactor: 1, text: null, limits: USUAL_LIMITS };

/** The typist as chosen, kept by name among `values`. */
export function makeTypist(values: Pick<KeyValue, 'get' | 'set'>): StoreApi<TypistState> {
  let started: Promise<void> | undefined;
  let isTouched = false;
  return createStore<TypistState>((set, get) => {
    const person = (): Person => {
      const { speed, spreadFactor, measured } = get();
      return personOfSpeed(speed, spreadFactor, measured);
    };
    const choose = (choices: Partial<TypistChoices>) => {
      isTouched = true;
      set(choices);
      if ('speed' in choices || 'spreadFactor' in choices) set({ person: person() });
      const { speed, spreadFactor, text, limits } = get();
      values.set(KEPT_AS, { speed, spreadFactor, text, limits }).catch(() => undefined);
    };
    const takeUp = async () => {
      const kept = readChoices(await values.get(KEPT_AS));
      // What was chosen while it was read is newer.
      if (isTouched) return;
      set(kept);
      set({ person: person() });
    };
    return {
      ...USUAL,
      measured: null,
      person: personOfSpeed(USUAL.speed, USUAL.spreadFactor, null),
      start: () => {
        started ??= takeUp().catch(() => undefined);
        return started;
      },
      setSpeed: (speed) => choose({ speed }),
      setSpread: (spreadFactor) => choose({ spreadFactor }),
      setText: (text) => choose({ text }),
      setLimits: (limits) => choose({ limits: { ...get().limits, ...limits } }),
      setMeasured: (measured) => {
        set({ measured });
        if (get().speed === 'measured') set({ person: person() });
      },
    };
  });
}

/** What of a kept value can be used; the rest is as usual. */
export function readChoices(kept: unknown): TypistChoices {
  if (typeof kept !== 'object' || kept === null) return USUAL;
  const { speed, spreadFactor, text, limits } = kept as Partial<Record<keyof TypistChoices, unknown>>;
  const { least, most } = SPREAD_FACTORS;
  const isFactor = typeof spreadFactor === 'number' && spreadFactor >= least && spreadFactor <= most;
  return {
    speed: isSpeed(speed) ? speed : USUAL.speed,
    spreadFactor: isFactor ? spreadFactor : USUAL.spreadFactor,
    text: [...READY_TEXTS, 'own' as const, 'design' as const].find((name) => name === text) ?? null,
    limits: readLimits(limits),
  };
}

function readLimits(kept: unknown): AccidentLimits {
  const given: Readonly<Record<string, unknown>> =
    typeof kept === 'object' && kept !== null ? { ...kept } : {};
  const limit = (name: keyof AccidentLimits): number => {
    const value = given[name];
    return typeof value === 'number' && value >= 0 && value < 1e6 ? value : USUAL_LIMITS[name];
  };
  return {
    chordPer1000Words: limit('chordPer1000Words'),
    holdPer1000Words: limit('holdPer1000Words'),
    missedPercent: limit('missedPercent'),
    delayMs: limit('delayMs'),
    frequentPer1000Words: limit('frequentPer1000Words'),
  };
}
