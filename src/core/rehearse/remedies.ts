import { applyEdit } from '../keymap/apply-edit.ts';
import type { Edit, TimingChange } from '../keymap/edit.ts';
import { bindingThrough, chordById } from '../keymap/lookup.ts';
import { chordsOf, timingOf } from '../keymap/timing.ts';
import type { Chord, Keymap, Place } from '../keymap/types.ts';
import { lateKey } from './decision-words.ts';
import type { Names } from './key-words.ts';
import { ms } from './key-words.ts';
import { pressesBetween } from './presses-between.ts';
import { rehearse } from './recorder.ts';
import type { Decision, Press, Run } from './run.ts';
import { type Slip, slipsOf } from './slips.ts';
import { stateAt } from './state-at.ts';

/** A setting with which the same presses would not have gone wrong there. */
export interface Remedy {
  readonly title: string;
  readonly edit: Edit;
  /** Slips in the whole stream with it. */
  readonly slips: number;
}

interface Candidate {
  readonly title: string;
  readonly edit: Edit;
}

/** Settings are proposed in steps of so many ms, as a person would choose them. */
const STEP_MS = 5;
/** No longer times are proposed: nobody waits for them. */
const LONGEST_MS = 1000;
/** So many causes of a slip are looked at. */
const MOST_CAUSES = 3;

const up = (value: number) => Math.ceil(value / STEP_MS) * STEP_MS;
const down = (value: number) => Math.floor(value / STEP_MS) * STEP_MS;

/**
 * Settings that would have prevented a slip. Each is proved by playing the whole stream with it: only those are given
 * with which the slip is gone, those with the fewest slips in all first.
 */
export function remediesOf(run: Run, meant: string, slip: Slip, names: Names): readonly Remedy[] {
  const candidates = slip.causes.slice(0, MOST_CAUSES).flatMap((at) => {
    const decision = run.decisions[at];
    return decision === undefined ? [] : candidatesOf(run, decision, names);
  });
  const known = new Set<string>();
  const proved = [...candidates, ...quietCandidates(run, slip, names)].flatMap(({ title, edit }) => {
    if (known.has(title)) return [];
    known.add(title);
    const slips = slipsWith(run, meant, edit);
    if (slips === null || slips.some((other) => isStillThere(slip, other))) return [];
    return [{ title, edit, slips: slips.length }];
  });
  return proved.sort((one, other) => one.slips - other.slips);
}

function slipsWith(run: Run, meant: string, edit: Edit): readonly Slip[] | null {
  const outcome = applyEdit(run.keymap, edit);
  if (!outcome.ok || outcome.value.keymap === run.keymap) return null;
  const played = rehearse(outcome.value.keymap, run.host, run.events);
  return played.ok ? slipsOf(played.value, meant) : null;
}

/** A slip without a meant character (something came unasked) lies between two. */
function isStillThere(slip: Slip, other: Slip): boolean {
  const isPoint = slip.meantFrom === slip.meantTo;
  if (isPoint || other.meantFrom === other.meantTo)
    return other.meantFrom <= slip.meantTo && other.meantTo >= slip.meantFrom;
  return other.meantFrom < slip.meantTo && other.meantTo > slip.meantFrom;
}

function candidatesOf(run: Run, decision: Decision, names: Names): readonly Candidate[] {
  switch (decision.what) {
    case 'chord':
      return againstChord(run, decision, names);
    case 'no-chord':
      return forChord(run, decision, names);
    case 'hold':
      return againstHold(run, decision, names);
    case 'tap':
      return forHold(run, decision, names);
    default:
      return [];
  }
}

function windowOf(chord: Chord, windowMs: number, names: Names): Candidate {
  return {
    title: `Window of ${names.chord(chord.id)}: ${ms(windowMs)} instead of ${ms(chord.windowMs)}`,
    edit: { edit: 'change-chord', chord: chord.id, to: { windowMs } },
  };
}

function quietOf(chord: Chord, quietBeforeMs: number, names: Names): Candidate {
  const now = ms(chord.quietBeforeMs ?? 0);
  return {
    title: `Quiet before ${names.chord(chord.id)}: ${ms(quietBeforeMs)} instead of ${now}`,
    edit: { edit: 'change-chord', chord: chord.id, to: { quietBeforeMs } },
  };
}

/** A chord fired that was not meant: a window that its keys missed, or more quiet than there was before them. */
function againstChord(run: Run, { chord: id = '', data }: Decision, names: Names): readonly Candidate[] {
  const chord = chordById(run.keymap, id);
  if (chord === undefined || data?.since === undefined) return [];
  const apart = data.apartMs ?? 0;
  const shorter = down(apart - 0.1) > 0 ? down(apart - 0.1) : Math.floor(apart - 0.1);
  const gap = gapBefore(run, data.since);
  return [
    ...(shorter >= 1 ? [windowOf(chord, shorter, names)] : []),
    ...(gap < LONGEST_MS ? [quietOf(chord, up(gap + 0.1), names)] : []),
  ];
}

/** A chord was meant that did not fire: a window in which the late key would have come. */
function forChord(run: Run, decision: Decision, names: Names): readonly Candidate[] {
  const late = lateKey(run, decision);
  const chord = late && chordById(run.keymap, late.chord);
  if (late === undefined || chord === undefined) return [];
  return [windowOf(chord, up(late.press.down - (decision.data?.since ?? 0)), names)];
}

/** Chords whose keys came together but which had not had quiet enough to begin. */
function quietCandidates(run: Run, { fromMs, toMs }: Slip, names: Names): readonly Candidate[] {
  const presses = pressesBetween(run.presses, fromMs, toMs).filter(
    ({ down: at }) => at > fromMs && at < toMs,
  );
  return chordsOf(run.keymap).flatMap((chord) => {
    if ((chord.quietBeforeMs ?? 0) === 0) return [];
    const downs = chord.keys.flatMap((key) => presses.find((press) => press.key === key) ?? []);
    const first = Math.min(...downs.map((press) => press.down));
    const last = Math.max(...downs.map((press) => press.down));
    if (downs.length < chord.keys.length || last - first > chord.windowMs) return [];
    const gap = gapBefore(run, first);
    return gap < (chord.quietBeforeMs ?? 0) ? [quietOf(chord, down(gap), names)] : [];
  });
}

/** From the press before to a press, ms; infinite where there is none before. */
function gapBefore({ presses }: Run, since: number): number {
  let before = Number.NEGATIVE_INFINITY;
  for (const press of presses) {
    if (press.down >= since) break;
    before = press.down;
  }
  return since - before;
}

interface Settled {
  readonly place: Place;
  readonly timing: ReturnType<typeof timingOf>;
  readonly press: Press;
  readonly name: string;
}

function settledOf(run: Run, { key, t, presses }: Decision, names: Names): Settled | undefined {
  const press = run.presses[presses[0] ?? -1];
  if (key === undefined || press === undefined) return undefined;
  const found = bindingThrough(run.keymap, new Set(stateAt(run, t - 0.001).layersOn), key);
  if (found?.binding.tap === undefined || found.binding.hold === undefined) return undefined;
  const place = { layer: found.layer.id, key };
  return { place, timing: timingOf(run.keymap, found.binding), press, name: names.key(key) };
}

const HOLD_BY = { 'time-only': 'time only', 'press-inside': 'a press inside', 'tap-inside': 'a tap inside' };

function timed({ place, name }: Settled, what: string, timing: TimingChange): Candidate {
  return { title: `${name}: ${what}`, edit: { edit: 'set-binding-timing', place, timing } };
}

/** A key became a hold that was meant as a tap. */
function againstHold(run: Run, decision: Decision, names: Names): readonly Candidate[] {
  const settled = settledOf(run, decision, names);
  if (settled === undefined) return [];
  const { timing, press } = settled;
  const dwell = (press.up ?? decision.t) - press.down;
  const gap = gapBefore(run, press.down);
  const longer = dwell < LONGEST_MS && dwell > timing.holdAfterMs ? up(dwell) : null;
  return [
    ...(longer === null
      ? []
      : [
          timed(settled, `hold after ${ms(longer)} instead of ${ms(timing.holdAfterMs)}`, {
            holdAfterMs: longer,
          }),
        ]),
    ...(timing.tapIfAlone ? [] : [timed(settled, 'tap if alone', { tapIfAlone: true })]),
    ...(timing.holdBy === 'press-inside'
      ? [timed(settled, `hold by ${HOLD_BY['tap-inside']}`, { holdBy: 'tap-inside' })]
      : []),
    ...(timing.holdBy === 'time-only'
      ? []
      : [timed(settled, `hold by ${HOLD_BY['time-only']}`, { holdBy: 'time-only' })]),
    ...(timing.sameHandTaps ? [] : [timed(settled, 'same hand taps', { sameHandTaps: true })]),
    ...(gap < LONGEST_MS && gap >= timing.quietBeforeMs
      ? [timed(settled, `quiet before ${ms(up(gap + 0.1))}`, { quietBeforeMs: up(gap + 0.1) })]
      : []),
  ];
}

/** A key was a tap that was meant as a hold. */
function forHold(run: Run, decision: Decision, names: Names): readonly Candidate[] {
  const settled = settledOf(run, decision, names);
  if (settled === undefined) return [];
  const { timing, press } = settled;
  const dwell = (press.up ?? decision.t) - press.down;
  const apart = decision.data?.apartMs ?? 0;
  switch (decision.rule) {
    case 'S10':
      return [timed(settled, `quiet before ${ms(down(apart))}`, { quietBeforeMs: down(apart) })];
    case 'S11': {
      const againWithinMs = Math.max(0, down(apart - 0.1));
      return [timed(settled, `again within ${ms(againWithinMs)}`, { againWithinMs })];
    }
    case 'S4':
      return [timed(settled, 'same hand does not tap', { sameHandTaps: false })];
    default:
      return [
        ...(down(dwell - 0.1) > 0
          ? [
              timed(settled, `hold after ${ms(down(dwell - 0.1))} instead of ${ms(timing.holdAfterMs)}`, {
                holdAfterMs: down(dwell - 0.1),
              }),
            ]
          : []),
        ...(timing.holdBy === 'press-inside'
          ? []
          : [timed(settled, `hold by ${HOLD_BY['press-inside']}`, { holdBy: 'press-inside' })]),
        ...(timing.holdBy === 'time-only'
          ? [timed(settled, `hold by ${HOLD_BY['tap-inside']}`, { holdBy: 'tap-inside' })]
          : []),
      ];
  }
}

/** A design with tries made on it, those that no longer fit left out. */
export function withTries(keymap: Keymap, tries: readonly Edit[]): Keymap {
  return tries.reduce((now, edit) => {
    const outcome = applyEdit(now, edit);
    return outcome.ok ? outcome.value.keymap : now;
  }, keymap);
}
