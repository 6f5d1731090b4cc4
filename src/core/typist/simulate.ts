import { randomLcg } from 'd3-random';
import { chordsOf, layersOfChord } from '../keymap/timing.ts';
import type { ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';
import type { RunCounts } from '../needs/counts-runs.ts';
import { areNeighbours } from './chord-misfires.ts';
import { Hands, type Intent } from './hands.ts';
import { meanOf, type Rate, rateOf } from './interval-of-rate.ts';
import { ANY_LETTERS } from './pair-class.ts';
import { CHARACTERS_PER_WORD, SLIPS_PER_1000_WORDS } from './parameters.ts';
import type { Person } from './person.ts';
import type { PressRuns } from './press-runs.ts';
import type { Press } from './presses.ts';
import { textSource } from './sample-text.ts';
import { sampleTypist } from './sample-typist.ts';
import { type Situation, situationOf } from './situation.ts';
import { Tally } from './tally.ts';

/** What a simulation takes. */
export interface SimulationBudget {
  /** Words to type, of five characters. */
  readonly words: number;
  readonly seed: number;
  /** Uses of every chord and hold to make besides, for their misses; they are no part of the words. */
  readonly usesEach: number;
}

/** Asked after every typist: how far it is; true to stop. */
export type Watcher = (doneWords: number) => boolean;

export interface SimulatedChord {
  readonly id: ChordId;
  readonly misfiresPer1000Words: Rate;
  /** Null where it was not used: not live on the base layer. */
  readonly missesPer1000Uses: Rate | null;
  /** Of those that came, how many came as the chord's hold though its tap was meant; null without a hold, or where none came. */
  readonly holdsPer1000Uses: Rate | null;
}

export interface SimulatedHold {
  readonly key: KeyId;
  readonly layer: LayerId;
  readonly misfiresPer1000Words: Rate;
  readonly missesPer1000Uses: Rate | null;
}

export interface SimulatedDelay {
  readonly key: KeyId;
  readonly layer: LayerId;
  readonly meanMs: number;
  readonly p95Ms: number;
  /** Between what the mean lies, ms. */
  readonly meanLowMs: number;
  readonly meanHighMs: number;
}

/** What came of it, in the document's order; intervals hold 95 %. */
export interface Simulation {
  readonly chords: readonly SimulatedChord[];
  readonly holds: readonly SimulatedHold[];
  readonly delay: readonly SimulatedDelay[];
  readonly words: number;
  readonly typists: number;
  readonly seed: number;
  readonly stoppedBy: 'words' | 'cancelled';
}

const WORDS_EACH = 100;
/** Slips within 60 ms over those within 40; see `slipShare`. */
const ALL_SLIPS = 1.4;
/** Characters between two uses. */
const BETWEEN_USES = 10;

/** Types text drawn from the counts, typist after typist, through the engine itself. */
export function simulate(
  keymap: Keymap,
  runs: PressRuns,
  counts: RunCounts,
  person: Person,
  budget: SimulationBudget,
  watch: Watcher = () => false,
): Simulation {
  const situation = situationOf(runs, person);
  const tally = new Tally(runs.compiled);
  const typing = new Typing(situation, counts, tally, randomLcg(scrambled(budget.seed)));
  const words: number[] = [];
  let done = 0;
  let stoppedBy: Simulation['stoppedBy'] = 'words';
  while (done < budget.words && stoppedBy === 'words') {
    const now = Math.min(WORDS_EACH, budget.words - done);
    typing.nextTypist();
    for (let at = 0; at < now * CHARACTERS_PER_WORD; at++) typing.character();
    words.push(now);
    done += now;
    tally.nextBatch();
    if (watch(done)) stoppedBy = 'cancelled';
  }
  if (stoppedBy === 'words') typing.makeUses(usesOf(keymap, runs), budget.usesEach, BETWEEN_USES);
  typing.end();
  return {
    ...resultOf(keymap, runs, tally, words),
    words: done,
    typists: words.length,
    seed: budget.seed,
    stoppedBy,
  };
}

/** Neighbouring seeds must not give neighbouring sequences. */
function scrambled(seed: number): number {
  const mixed = Math.imul((seed | 0) ^ 0x9e3779b9, 0x85ebca6b);
  return ((mixed ^ (mixed >>> 13)) >>> 0) / 2 ** 32;
}

const NO_INTENT: Intent = { press: -1, chord: -1, asHold: false, place: -1 };

/** Types characters and makes uses; holds what is the same for all typists. */
class Typing {
  private readonly situation: Situation;
  private readonly tally: Tally;
  private readonly random: () => number;
  private readonly next: () => string;
  private readonly hands: Hands;
  private readonly slipPairs: readonly (readonly [number, number])[];
  private readonly slipChance: number;
  private readonly intents: readonly Intent[];
  private previous = -1;

  constructor(situation: Situation, counts: RunCounts, tally: Tally, random: () => number) {
    this.situation = situation;
    this.tally = tally;
    this.random = random;
    this.next = textSource(counts, random);
    this.intents = situation.runs.presses.map(({ chord, asHold, place }, press) => ({
      press,
      chord,
      asHold,
      place,
    }));
    this.hands = new Hands(situation, sampleTypist(situation.model, random), tally, random);
    this.slipPairs = slipPairsOf(situation);
    const perCharacter = (SLIPS_PER_1000_WORDS * ALL_SLIPS) / (1000 * CHARACTERS_PER_WORD);
    this.slipChance = this.slipPairs.length * perCharacter;
  }

  nextTypist(): void {
    this.hands.hand(sampleTypist(this.situation.model, this.random));
    this.previous = -1;
  }

  character(): void {
    const numbers = this.situation.runs.pressesOf.get(this.next()) ?? null;
    if (numbers === null) {
      this.previous = -1;
      return;
    }
    for (const number of numbers) this.one(number);
    if (this.random() < this.slipChance) this.slip();
  }

  /** Uses every target in turn, amid text; each round is a typist. */
  makeUses(targets: readonly Press[], times: number, between: number): void {
    for (let round = 0; round < times; round++) {
      if (round % 20 === 0) this.nextTypist();
      for (const target of targets) {
        for (let at = 0; at < between; at++) this.character();
        this.use(target);
      }
      this.tally.nextBatch();
    }
  }

  end(): void {
    this.hands.rest();
    this.tally.finish();
  }

  private one(number: number): void {
    const { runs, kinds } = this.situation;
    const press = runs.presses[number];
    if (press === undefined) return;
    const kind = this.previous === -1 ? ANY_LETTERS : kinds.kind(this.previous, number);
    this.hands.press(press, kind, this.intents[number] ?? NO_INTENT);
    if (press.chord >= 0) this.tally.usesChord(press.chord);
    this.previous = number;
  }

  private use(target: Press): void {
    const { chord, asHold, place } = target;
    if (chord >= 0) this.tally.usesChord(chord);
    this.hands.press(target, ANY_LETTERS, { press: -1, chord, asHold, place });
    this.previous = -1;
    if (asHold) this.one(this.anyTapBut(target.keys[0] ?? -1));
    this.previous = -1;
  }

  /** A tap on the base layer, as often as the text has it. */
  private anyTapBut(key: number): number {
    const { runs, kinds } = this.situation;
    const fits = runs.presses.map(
      (press) =>
        press.layer === 0 &&
        !press.held &&
        press.chord < 0 &&
        press.keys[0] !== key &&
        (runs.seats[press.keys[0] ?? 0]?.finger ?? 0) > 0,
    );
    const all = fits.reduce((sum, fit, at) => sum + (fit ? (kinds.per1000[at] ?? 0) : 0), 0);
    let point = this.random() * all;
    for (const [at, fit] of fits.entries()) {
      if (!fit) continue;
      point -= kinds.per1000[at] ?? 0;
      if (point < 0) return at;
    }
    return Math.max(0, fits.indexOf(true));
  }

  private slip(): void {
    const [one, other] = this.slipPairs[Math.floor(this.random() * this.slipPairs.length)] ?? [];
    if (one === undefined || other === undefined) return;
    const beyond = this.random() * ALL_SLIPS;
    const gap = beyond < 1 ? 40 * beyond : 40 + (20 * (beyond - 1)) / (ALL_SLIPS - 1);
    this.hands.slip(this.random() < 0.5 ? [one, other] : [other, one], gap);
    this.previous = -1;
  }
}

function slipPairsOf({ runs, contexts }: Situation): readonly (readonly [number, number])[] {
  const typed = [...contexts.ofKey.keys()];
  return typed.flatMap((one, at) =>
    typed.slice(at + 1).flatMap((other): (readonly [number, number])[] => {
      const [a, b] = [runs.seats[one], runs.seats[other]];
      return a !== undefined && b !== undefined && areNeighbours(a, b) ? [[one, other]] : [];
    }),
  );
}

/** Chords that are live on the base layer and hold/tap keys on it, as presses that are meant. */
function usesOf(keymap: Keymap, { compiled }: PressRuns): readonly Press[] {
  const base = keymap.layers[0];
  const chords = chordsOf(keymap).flatMap((chord, index): Press[] =>
    base !== undefined && layersOfChord(keymap, chord).includes(base.id)
      ? [
          {
            keys: chord.keys.map((key) => compiled.keyNumbers.get(key) ?? 0),
            chord: index,
            held: false,
            asHold: false,
            layer: 0,
            place: -1,
            both: null,
          },
        ]
      : [],
  );
  const holds = Object.keys(base?.places ?? {}).flatMap((id): Press[] => {
    const key = compiled.keyNumbers.get(id) ?? -1;
    const both = compiled.bindingAt[key] ?? null;
    if (both === null || both.tap === null || both.hold === null) return [];
    return [{ keys: [key], chord: -1, held: true, asHold: true, layer: 0, place: 0, both }];
  });
  return [...chords, ...holds];
}

function resultOf(keymap: Keymap, { compiled, presses }: PressRuns, tally: Tally, words: readonly number[]) {
  const misses = (batches: ReturnType<Tally['chordMisses']['get']>): Rate | null =>
    batches === undefined ? null : rateOf(compact(batches), compact(batches).tries, 1000);
  const chords = chordsOf(keymap).map(({ id, hold }, at) => ({
    id,
    misfiresPer1000Words: rateOf(tally.chordMisfires.get(at), words, 1000),
    missesPer1000Uses: misses(tally.chordMisses.get(at)),
    holdsPer1000Uses: hold === undefined ? null : misses(tally.chordHolds.get(at)),
  }));
  const holds = keymap.layers.flatMap((layer, number) =>
    Object.entries(layer.places).flatMap(([key, binding]) => {
      if (binding.tap === undefined || binding.hold === undefined) return [];
      const place = number * compiled.keyIds.length + (compiled.keyNumbers.get(key) ?? 0);
      const misfiresPer1000Words = rateOf(tally.holdMisfires.get(place), words, 1000);
      return {
        key,
        layer: layer.id,
        misfiresPer1000Words,
        missesPer1000Uses: misses(tally.holdMisses.get(place)),
      };
    }),
  );
  const delay = [...tally.waits].flatMap(([number, bins]) => {
    const press = presses[number];
    const key = compiled.keyIds[press?.keys[0] ?? -1];
    const layer = keymap.layers[press?.place ?? -1];
    const waited = tally.waited.get(number);
    if (key === undefined || layer === undefined || waited === undefined) return [];
    const { low, high } = meanOf(compact(waited));
    return { key, layer: layer.id, ...waitingOf(bins), meanLowMs: low, meanHighMs: high };
  });
  return { chords, holds, delay };
}

/** Only the batches in which it was tried. */
function compact({ hits, tries }: { readonly hits: readonly number[]; readonly tries: readonly number[] }) {
  const used = [...tries.keys()].filter((batch) => (tries[batch] ?? 0) > 0);
  return { hits: used.map((batch) => hits[batch] ?? 0), tries: used.map((batch) => tries[batch] ?? 0) };
}

function waitingOf(bins: Float64Array): { readonly meanMs: number; readonly p95Ms: number } {
  const all = bins.reduce((sum, each) => sum + each, 0);
  const meanMs = bins.reduce((sum, each, ms) => sum + each * ms, 0) / all;
  let seen = 0;
  const p95Ms = bins.findIndex((each) => {
    seen += each;
    return seen >= 0.95 * all;
  });
  return { meanMs, p95Ms };
}
