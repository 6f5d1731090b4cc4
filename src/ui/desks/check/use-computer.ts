import { useRef, useState } from 'react';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import {
  hostsThatFit,
  hostsThatFitMap,
  nextProbe,
  type Probe,
  type ProbeAnswer,
} from '../../../core/host/tell-apart.ts';
import { TYPING_CODES } from '../../../core/host/typing-codes.ts';
import { isCode, isModifier } from '../../../core/keymap/codes.ts';
import { loadHost, loadOfferedHosts } from '../../../store/hosts.ts';
import type { TypedKey } from '../../board/typing/listen-to-keys.ts';
import { fitsMap, useKeyboardMap } from '../../board/typing/use-keyboard-map.ts';
import { useTyping } from '../../board/typing/use-typing.ts';

/** A layout that the computer may be on. */
export interface Candidate {
  readonly title: string;
  readonly host: HostLayout;
}

/** What is known of the computer at hand. */
export interface Computer {
  /** Whether it is on the design's layout, by what the browser says; null where it cannot say. */
  readonly fits: boolean | null;
  /** Layouts left over by presses or by the browser's map; null before anybody has looked. */
  readonly left: readonly Candidate[] | null;
  /** The press that is asked for; null where none is. */
  readonly probe: Probe | null;
  /** What was pressed instead. */
  readonly other: string | null;
  readonly finding: boolean;
  find(): void;
  noSuchKey(): void;
  stop(): void;
}

/** Finds out which host layout the computer at hand is on: from the browser where it knows, else by a few presses. */
export function useComputer(designHost: HostLayout): Computer {
  const map = useKeyboardMap();
  const [candidates, setCandidates] = useState<readonly Candidate[] | null>(null);
  const [answers, setAnswers] = useState<readonly ProbeAnswer[]>([]);
  const [missing, setMissing] = useState<readonly string[]>([]);
  const [other, setOther] = useState<string | null>(null);
  const [finding, setFinding] = useState(false);
  const down = useRef(new Set<string>());

  const fits = fitsMap(map, designHost);
  const left = candidates === null ? null : leftOf(candidates, map, answers);
  const available = TYPING_CODES.filter((code) => !missing.includes(code));
  const probe =
    left === null || !finding
      ? null
      : nextProbe(
          left.map(({ host }) => host),
          answers,
          available,
        );

  const onKey = (key: TypedKey) => {
    if (key.kind === 'up') down.current.delete(key.code);
    else down.current.add(key.code);
    const isPress = key.kind === 'down' && !key.repeat && isCode(key.code) && !isModifier(key.code);
    if (!isPress || probe === null) return;
    const isIt = key.code === probe.code && levelIsDown(down.current, probe);
    setOther(isIt ? null : key.code);
    if (isIt) setAnswers([...answers, { probe, key: key.key }]);
  };
  const stop = () => setFinding(false);
  useTyping({ active: probe !== null, onKey, onLeave: stop });
  const find = () => {
    setAnswers([]);
    setMissing([]);
    setFinding(true);
    if (candidates === null) void loadCandidates().then(setCandidates);
  };
  const noSuchKey = () => probe !== null && setMissing([...missing, probe.code]);
  return { fits, left, probe, other, finding, find, noSuchKey, stop };
}

function leftOf(
  candidates: readonly Candidate[],
  map: ReadonlyMap<string, string> | null,
  answers: readonly ProbeAnswer[],
): readonly Candidate[] {
  const all = candidates.map(({ host }) => host);
  const fit = new Set(hostsThatFit(map === null ? all : hostsThatFitMap(all, map), answers));
  return candidates.filter(({ host }) => fit.has(host));
}

function levelIsDown(down: ReadonlySet<string>, { shift, level3 }: Probe): boolean {
  const has = (name: string) => [...down].some((code) => code.startsWith(name));
  return has('Shift') === shift && has('Alt') === level3;
}

async function loadCandidates(): Promise<readonly Candidate[]> {
  const offered = await loadOfferedHosts();
  return Promise.all(
    offered.map(async ({ layout, variant, title }) => ({ title, host: await loadHost({ layout, variant }) })),
  );
}
