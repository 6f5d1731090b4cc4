import { useDeferredValue, useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import type { Finding } from '../../core/findings/find.ts';
import { withAccidents } from '../../core/findings/find-all.ts';
import type { LetterProtections } from '../../core/findings/letter-protections.ts';
import type { Need } from '../../core/keymap/need.ts';
import type { Chord, Keymap, Place } from '../../core/keymap/types.ts';
import { type FindList, needsOfKeymap } from '../../core/needs/needs-of.ts';
import type { ChordStudy } from '../../core/typist/chord-study.ts';
import type { HoldStudy } from '../../core/typist/hold-study.ts';
import type { Judged, ProtectionAsked } from '../../workers/accident-judge.ts';
import { useAnalysis } from '../analysis.ts';
import { useBench } from '../bench.ts';
import { useHost } from '../hosts.ts';
import { useFindList } from '../need-lists.ts';
import { useTypist } from '../typist.ts';
import { askJudge, isSameDesign, type TypedDesignWithText } from './accident-worker.ts';
import { makeLatest } from './latest.ts';

const known = new WeakMap<Keymap, { readonly findList: FindList; readonly needs: readonly Need[] }>();

/** The needs of a design; the same list for the same design and lists, whoever asks. */
function needsOf(keymap: Keymap, findList: FindList): readonly Need[] {
  const before = known.get(keymap);
  if (before?.findList === findList) return before.needs;
  const needs = needsOfKeymap(keymap, findList);
  known.set(keymap, { findList, needs });
  return needs;
}

/** The open design with the typist and the text as chosen; null while the text or the host layout is on its way. */
export function useTypedDesign(): TypedDesignWithText | null {
  const keymap = useBench((bench) => bench.keymap);
  const { table, state } = useHost(keymap);
  const needs = needsOf(keymap, useFindList());
  const { person, limits, typed } = useTypist();
  const { counts } = typed;
  return useMemo(
    () => (counts === null || state === 'loading' ? null : { keymap, table, needs, person, limits, counts }),
    [keymap, table, state, needs, person, limits, counts],
  );
}

const judging = makeLatest<TypedDesignWithText, Judged | null>(
  (design) => askJudge(design, (judge, typed) => judge.judge(typed)),
  isSameDesign,
);

/** So long a design must rest before its accidents are worked out anew: whoever edits on must not be disturbed. */
const REST_MS = 300;

/** What ordinary typing does to the open design, as far as it is worked out; after an edit the former answer stays until the new one is there. */
export interface KnownAccidents {
  readonly judged: Judged | null;
  /** Whether it is about the design as it is now. */
  readonly isNow: boolean;
  /** Why there is no answer, in a sentence. */
  readonly failed: string | null;
}

/** Has the accidents of the open design worked out, away from the page, and again after every change. */
export function useAccidents(): KnownAccidents {
  const design = useTypedDesign();
  const { answer, failed, ask } = useStore(judging);
  useEffect(() => {
    if (design === null) return;
    const timer = setTimeout(() => ask(design), judging.getState().asked === null ? 0 : REST_MS);
    return () => clearTimeout(timer);
  }, [design, ask]);
  const isNow = answer !== null && design !== null && isSameDesign(answer.to, design);
  return { judged: answer?.value ?? null, isNow, failed };
}

/** All that is to be said about the open design: what stands at once, and what typing does to it as soon as that is known. */
export function useFindings(): readonly Finding[] {
  const { findings, facts } = useAnalysis();
  // Drawn when there is time for it: what comes late may come a little later.
  const judged = useDeferredValue(useAccidents().judged);
  return useMemo(() => {
    if (judged === null) return findings;
    // An answer that is still about the design before an edit must not speak of what is gone.
    const { keymap } = facts;
    const keys = new Set(keymap.board.keys.map(({ id }) => id));
    const layers = new Set(keymap.layers.map(({ id }) => id));
    const chords = new Set((keymap.chords ?? []).map(({ id }) => id));
    const standing = judged.findings.filter(
      ({ subjects }) =>
        subjects.keys.every((id) => keys.has(id)) &&
        subjects.layers.every((id) => layers.has(id)) &&
        subjects.chords.every((id) => chords.has(id)),
    );
    return withAccidents(findings, standing);
  }, [findings, facts, judged]);
}

interface Question<About> {
  readonly design: TypedDesignWithText;
  readonly about: About;
}

function isSameQuestion<About>(one: Question<About>, other: Question<About>): boolean {
  return isSameDesign(one.design, other.design) && one.about === other.about;
}

/** A study of one thing on the open design; the former one stays until the new one is there. Null asks for none. */
function useStudy<About, Answer>(
  about: About | null,
  answer: (question: Question<About>) => Promise<Answer>,
): Answer | null {
  const design = useTypedDesign();
  const latest = useMemo(() => makeLatest(answer, isSameQuestion), [answer]);
  const { answer: known, ask } = useStore(latest);
  useEffect(() => {
    if (design !== null && about !== null) ask({ design, about });
  }, [design, about, ask]);
  return about === null ? null : (known?.value ?? null);
}

const studyChord = ({ design, about }: Question<Chord>): Promise<ChordStudy | null> =>
  askJudge(design, (judge, typed) => judge.studyChord(typed, about));

const studyHold = ({ design, about }: Question<Place>): Promise<HoldStudy | null> =>
  askJudge(design, (judge, typed) => judge.studyHold(typed, about));

const protect = ({ design, about }: Question<ProtectionAsked>): Promise<LetterProtections | null> =>
  askJudge(design, (judge, typed) => judge.protect(typed, about));

/** What every window of a chord would bring; null until it is known. The chord must be the same object for as long as it is the same. */
export function useChordStudy(chord: Chord): ChordStudy | null {
  return useStudy(chord, studyChord);
}

/** What every choice for a hold/tap key would bring; null until it is known, and where the key is none. */
export function useHoldStudy({ key, layer }: Place): HoldStudy | null {
  const place = useMemo(() => ({ key, layer }), [key, layer]);
  return useStudy(place, studyHold);
}

/** The fewest changes that bring the hold/tap letters under a rate; null until they are known, and without a wish. */
export function useProtections(wish: ProtectionAsked | null): LetterProtections | null {
  return useStudy(wish, protect);
}
