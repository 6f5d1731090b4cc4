import { create } from 'zustand';
import { type Probe, type ProbeAnswer, withoutProbe } from '../../core/host/tell-apart.ts';
import { NOTHING_TOLD, readComputer, type ToldOfComputer } from '../../core/host/told-of-computer.ts';

interface ComputerState extends ToldOfComputer {
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
  const put = (change: Partial<ToldOfComputer>) => {
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
