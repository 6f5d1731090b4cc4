import * as z from 'zod/mini';
import { create } from 'zustand';
import {
  type Missing,
  NOTHING_MISSING,
  type Probe,
  type ProbeAnswer,
  withoutProbe,
} from '../../core/host/tell-apart.ts';
import { CODES } from '../../core/keymap/codes.ts';

/** What presses have told of the computer at hand, and which layouts nobody wanted to be asked about. */
export interface KeptComputer {
  readonly answers: readonly ProbeAnswer[];
  readonly missing: Missing;
  /** XKB names of the layouts of designs for which the presses were skipped. */
  readonly skipped: readonly string[];
  /** When the last of it was told, ms since 1970. */
  readonly at: number;
}

export const NOTHING_TOLD: KeptComputer = { answers: [], missing: NOTHING_MISSING, skipped: [], at: 0 };

/** So long what was told holds, ms: till the next day of work. A computer can be set to another layout: our own choice. */
export const HOLDS_FOR_MS = 12 * 60 * 60 * 1000;

const code = z.enum(CODES);
const schema = z.object({
  answers: z.array(
    z.object({
      probe: z.object({ code, shift: z.boolean(), level3: z.boolean() }),
      key: z.string(),
      caps: z.boolean(),
    }),
  ),
  missing: z.object({ codes: z.array(code), level3: z.boolean() }),
  skipped: z.array(z.string()),
  at: z.number(),
});

/** What was kept, as far as it can be read and still holds. */
export function readComputer(text: string | null, now: number): KeptComputer {
  try {
    const read = schema.safeParse(JSON.parse(text ?? 'null'));
    const holds = read.success && read.data.at <= now && now - read.data.at < HOLDS_FOR_MS;
    return holds ? read.data : NOTHING_TOLD;
  } catch {
    return NOTHING_TOLD;
  }
}

interface ComputerState extends KeptComputer {
  /** Forgets what was told. */
  askAnew(): void;
  tell(answer: ProbeAnswer): void;
  cannotPress(probe: Probe): void;
  /** The presses are not wanted for designs of that layout. */
  skip(layout: string): void;
}

/** Of this computer, so it is in no backup, which may be opened on another one. */
const KEPT_AS = 'handful computer';

/** What presses have told of the computer at hand. */
export const useKeptComputer = create<ComputerState>()((set, get) => {
  const put = (change: Partial<KeptComputer>) => {
    const { answers, missing, skipped } = get();
    const now = { answers, missing, skipped, ...change, at: Date.now() };
    set(now);
    try {
      localStorage.setItem(KEPT_AS, JSON.stringify(now));
    } catch {
      // A browser may refuse to keep anything: then it is asked again at the next visit.
    }
  };
  return {
    ...readComputer(kept(), Date.now()),
    askAnew: () => put(NOTHING_TOLD),
    tell: (answer) => put({ answers: [...get().answers, answer] }),
    cannotPress: (probe) => put({ missing: withoutProbe(get().missing, probe) }),
    skip: (layout) => put({ skipped: [...get().skipped, layout] }),
  };
});

function kept(): string | null {
  try {
    return localStorage.getItem(KEPT_AS);
  } catch {
    return null;
  }
}
