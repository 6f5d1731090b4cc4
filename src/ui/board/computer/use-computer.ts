import { useEffect, useMemo, useRef, useState } from 'react';
import { type ComputerVerdict, computerVerdict } from '../../../core/host/computer-verdict.ts';
import {
  hostsThatFit,
  hostsThatFitMap,
  type Missing,
  nextQuestion,
  type Probe,
  type ProbeAnswer,
} from '../../../core/host/tell-apart.ts';
import { isModifier } from '../../../core/keymap/codes.ts';
import { type Candidate, loadCandidates, withDesign } from '../../../store/computer/candidates.ts';
import { useKeptComputer } from '../../../store/computer/kept-computer.ts';
import type { KnownHost } from '../../../store/hosts.ts';
import type { TypedKey } from '../typing/listen-to-keys.ts';
import { fitsMap, useKeyboardMap } from '../typing/use-keyboard-map.ts';
import { useTyping } from '../typing/use-typing.ts';

/** What is known of the computer at hand. */
export interface Computer {
  /** Whether it reads keys as the design has it; null where nobody knows yet. */
  readonly verdict: ComputerVerdict | null;
  /** The layouts that presses left over; null where only the browser has been asked, or nobody. */
  readonly left: readonly Candidate[] | null;
  /** The presses are to be asked for before anything is typed on it. */
  readonly toBeAsked: boolean;
  /** Presses are being asked for, or the layouts fetched. */
  readonly asking: boolean;
  /** The press that is asked for; null where none is. */
  readonly probe: Probe | null;
  /** How many presses have been told. */
  readonly told: number;
  /** The code of what was pressed instead. */
  readonly other: string | null;
  ask(): void;
  /** There is no way to press what is asked for. */
  cannotPress(): void;
  skip(): void;
}

/**
 * Finds out how the computer at hand reads keys: from the browser where it knows, else by a few presses, which are
 * remembered for half a day. All keys are held back while a press is asked for.
 */
export function useComputer(known: KnownHost): Computer {
  const map = useKeyboardMap();
  const kept = useKeptComputer();
  const [asking, setAsking] = useState(false);
  const [other, setOther] = useState<string | null>(null);
  const answers = useMemo(() => answersInLine(kept.answers, map ?? null), [kept.answers, map]);
  const candidates = useCandidates(known, asking || answers.length > 0);
  const { left, question } = useMemo(
    () => standing(known, candidates, map ?? null, answers, kept.missing),
    [known, candidates, map, answers, kept.missing],
  );
  const probe = asking ? question : null;
  const name = `${known.host.layout} ${known.host.variant}`;
  const isSettled = left !== null && answers.length > 0 && (question === null || isOut(known, left));
  const verdict = isSettled ? computerVerdict(known.host, hostsOf(left)) : verdictOfMap(map, known);

  const skip = () => {
    setAsking(false);
    if (!isSettled) kept.askAnew();
    if (!isSettled) kept.skip(name);
  };
  const cannotPress = () => {
    setOther(null);
    if (probe !== null) kept.cannotPress(probe);
  };
  useProbing(probe, { other: setOther, tell: kept.tell, cannotPress, skip });
  return {
    verdict,
    left: isSettled ? left : null,
    toBeAsked: map === null && verdict === null && !kept.skipped.includes(name),
    asking: asking && (candidates === null || probe !== null),
    probe,
    told: answers.length,
    other,
    ask: () => {
      kept.askAnew();
      setOther(null);
      setAsking(true);
    },
    cannotPress,
    skip,
  };
}

const hostsOf = (candidates: readonly Candidate[]) => candidates.map(({ host }) => host);

/** The layouts of the page once they are wanted; null until they have come. */
function useCandidates(known: KnownHost, wanted: boolean): readonly Candidate[] | null {
  const [loaded, setLoaded] = useState<readonly Candidate[] | null>(null);
  useEffect(() => {
    if (!wanted) return;
    let isOver = false;
    void loadCandidates().then((candidates) => {
      if (!isOver) setLoaded(candidates);
    });
    return () => {
      isOver = true;
    };
  }, [wanted]);
  return useMemo(() => (loaded === null ? null : withDesign(loaded, known)), [loaded, known]);
}

/** Answers that the browser's own map contradicts were given while the computer was on another layout. */
function answersInLine(
  answers: readonly ProbeAnswer[],
  map: ReadonlyMap<string, string> | null,
): readonly ProbeAnswer[] {
  const isInLine = ({ probe: { code, shift, level3 }, key, caps }: ProbeAnswer) => {
    const said = map?.get(code);
    return shift || level3 || caps || said === undefined || key === 'Dead' || said === key;
  };
  return answers.every(isInLine) ? answers : [];
}

function standing(
  known: KnownHost,
  candidates: readonly Candidate[] | null,
  map: ReadonlyMap<string, string> | null,
  answers: readonly ProbeAnswer[],
  missing: Missing,
): { readonly left: readonly Candidate[] | null; readonly question: Probe | null } {
  if (candidates === null) return { left: null, question: null };
  const all = hostsOf(candidates);
  const mapped = map === null ? all : hostsThatFitMap(all, map);
  const fit = new Set(hostsThatFit(mapped, answers));
  return {
    left: candidates.filter(({ host }) => fit.has(host)),
    question: nextQuestion(known.host, mapped, answers, missing),
  };
}

/** No further press can make it the design's layout. */
function isOut(known: KnownHost, left: readonly Candidate[]): boolean {
  return computerVerdict(known.host, hostsOf(left)) === 'other';
}

function verdictOfMap(
  map: ReadonlyMap<string, string> | null | undefined,
  known: KnownHost,
): ComputerVerdict | null {
  const fits = fitsMap(map ?? null, known.host);
  return fits === null ? null : fits ? 'fits' : 'other';
}

interface Probing {
  other(code: string | null): void;
  tell(answer: ProbeAnswer): void;
  cannotPress(): void;
  skip(): void;
}

/** Hears the press that is asked for. A tap of Escape says that there is no way to press it, held for a second it skips. */
function useProbing(probe: Probe | null, { other, tell, cannotPress, skip }: Probing): void {
  const down = useRef(new Set<string>());
  const onKey = ({ kind, code, key, repeat, states }: TypedKey) => {
    if (kind === 'down') down.current.add(code);
    else down.current.delete(code);
    if (probe === null || repeat) return;
    if (code === 'Escape') {
      if (kind === 'up' && key !== '') cannotPress();
      return;
    }
    if (kind === 'up' || isModifier(code)) return;
    const isIt = code === probe.code && levelIsDown(down.current, probe);
    other(isIt ? null : code);
    if (isIt) tell({ probe, key, caps: states.includes('CapsLock') });
  };
  useTyping({ active: probe !== null, onKey, onLeave: skip });
}

/** Where AltGr is a key of its own the other Alt is none; a Mac's Option keys are both. */
function levelIsDown(down: ReadonlySet<string>, { shift, level3 }: Probe): boolean {
  const alts = /^Mac/.test(navigator.platform) ? ['AltLeft', 'AltRight'] : ['AltRight'];
  const has = (...codes: readonly string[]) => codes.some((code) => down.has(code));
  if (has('MetaLeft', 'MetaRight') || (!level3 && has('ControlLeft', 'ControlRight', 'AltLeft')))
    return false;
  return has('ShiftLeft', 'ShiftRight') === shift && has(...alts) === level3;
}
