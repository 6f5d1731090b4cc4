import { useMemo } from 'react';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import { companyOf } from '../../../core/practice/company.ts';
import type { DrillMaterial } from '../../../core/practice/drill.ts';
import { foldSessions, type NeedProgress, progressOf } from '../../../core/practice/progress.ts';
import { arrives, type RankedNeed, rankNeeds } from '../../../core/practice/ranked-needs.ts';
import type { Session } from '../../../core/practice/session.ts';
import { Ways } from '../../../core/practice/ways.ts';
import { useAnalysis } from '../../../store/analysis.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import { useTypist } from '../../../store/typist.ts';

/** All that the desk goes by: the design, its ways, the text, and how far the typist is. */
export interface Room {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly ways: Ways;
  readonly ranked: readonly RankedNeed[];
  /** How many needs the design does not type. */
  readonly untyped: number;
  readonly progress: ReadonlyMap<string, NeedProgress>;
  /** What the drills' company is taken from; null while it is on its way. */
  readonly textTitle: string | null;
  /** The progress with a session that is not over yet. */
  progressWith(session: Session): ReadonlyMap<string, NeedProgress>;
  /** What drills are made from, as far as the session has come. */
  materialFor(session: Session): DrillMaterial;
}

/** The room for the open design, renewed when the design, the text or the ended sessions change. */
export function useRoom(): Room {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const { needs } = useAnalysis();
  const { typed } = useTypist();
  const ended = usePractice((state) => state.ended);
  const group = usePractice((state) => state.choices.group);
  const ways = useMemo(() => new Ways(keymap, host, needs), [keymap, host, needs]);
  const company = useMemo(() => (typed.counts === null ? null : companyOf(typed.counts)), [typed.counts]);
  const folded = useMemo(() => foldSessions(ended), [ended]);
  return useMemo(() => {
    const known = (need: string) => ways.of(need)?.known ?? null;
    const progress = progressOf(folded, known);
    const progressWith = (session: Session) => progressOf(foldSessions([session], folded), known);
    const ranking = (of: ReadonlyMap<string, NeedProgress>) => rankNeeds(needs, of, company, Date.now());
    return {
      keymap,
      host,
      ways,
      progress,
      ranked: ranking(progress),
      untyped: needs.filter(({ route }) => route === null).length,
      textTitle: company === null ? null : typed.title,
      progressWith,
      materialFor: (session) => ({
        ranked: ranking(progressWith(session)).filter(
          ({ need }) => session.input === 'engine' || arrives(need),
        ),
        company,
        groups: group === null ? null : [group],
      }),
    };
  }, [keymap, host, ways, needs, folded, company, typed.title, group]);
}
