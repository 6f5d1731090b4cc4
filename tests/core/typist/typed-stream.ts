import { randomLcg } from 'd3-random';
import { fingerNumber } from '../../../src/core/typist/dwells.ts';
import {
  observed,
  observedChord,
  pairSharesOf,
  type RecordedKey,
} from '../../../src/core/typist/fit-observe.ts';
import type { Measured, MeasuredChord } from '../../../src/core/typist/measured.ts';
import { Model } from '../../../src/core/typist/model.ts';
import { ANY_LETTERS, intervalKind } from '../../../src/core/typist/pair-class.ts';
import type { TypistParameters } from '../../../src/core/typist/parameters.ts';
import { type Person, personAt } from '../../../src/core/typist/person.ts';
import { textSource } from '../../../src/core/typist/sample-text.ts';
import { type SampledTypist, sampleTypist } from '../../../src/core/typist/sample-typist.ts';
import { onsetSdMs } from '../../../src/core/typist/spread.ts';
import { STANDARD_SEATS } from '../../../src/core/typist/standard-seats.ts';
import { english } from './plain-board.ts';

export const englishShares = pairSharesOf(english);

/** One person and no population: the parameters are that person's own. */
export function alone(wpm: number, more: Partial<TypistParameters> = {}, spreadFactor = 1): Person {
  const { parameters } = personAt(wpm);
  return {
    parameters: { ...parameters, betweenLnIki: 0, dwellBetweenMs: 0, ...more },
    spreadFactor,
  };
}

/** One long text for all: making a source of text takes longer than typing it. */
const nextOfText = textSource(english, randomLcg(0.4));
const TEXT = Array.from({ length: 40_000 }, () => nextOfText().toLowerCase()).filter((char) =>
  STANDARD_SEATS.has(codeOf(char)),
);

const models = new WeakMap<Person, Model>();

/** English typed on a standard keyboard by a person drawn from the model, and chords made by the same hands. */
export function typedBy(person: Person, seed: number, keystrokes: number, chords: number): Measured {
  const random = randomLcg(((seed * 2654435761) >>> 0) / 2 ** 32);
  const model = models.get(person) ?? new Model(person);
  models.set(person, model);
  const typist = sampleTypist(model, random);
  return {
    ...observed(recorded(typist, seed * 307, keystrokes), englishShares),
    chords: Array.from({ length: chords }, (_, at) =>
      chordOf(typist, CHORDS[at % CHORDS.length] ?? [], person),
    ),
  };
}

const CHORDS = [
  ['KeyD', 'KeyF'],
  ['KeyJ', 'KeyK', 'KeyL'],
  ['KeyF', 'KeyJ'],
  ['KeyS', 'KeyD', 'KeyF'],
];

function recorded(typist: SampledTypist, from: number, keystrokes: number): readonly RecordedKey[] {
  const keys: RecordedKey[] = [];
  let t = 0;
  while (keys.length < keystrokes) {
    const char = TEXT[(from + keys.length) % TEXT.length] ?? ' ';
    const code = codeOf(char);
    const seat = STANDARD_SEATS.get(code);
    if (seat === undefined) continue;
    const before = keys.at(-1);
    const seatBefore = STANDARD_SEATS.get(before?.code ?? '');
    const share = before === undefined ? 0 : (englishShares(before.char ?? '', char) ?? 0);
    t += typist.interval(
      seatBefore === undefined ? ANY_LETTERS : intervalKind(seatBefore, seat, before?.code === code, share),
    );
    keys.push({ code, char, downMs: t, upMs: t + typist.dwell(fingerNumber(seat)) });
  }
  return keys;
}

function codeOf(char: string): string {
  return char === ' ' ? 'Space' : `Key${char.toUpperCase()}`;
}

function chordOf(typist: SampledTypist, codes: readonly string[], person: Person): MeasuredChord {
  const sd = onsetSdMs(
    codes.flatMap((code) => STANDARD_SEATS.get(code) ?? []),
    person.spreadFactor,
  );
  const chord = observedChord(codes.map((code) => ({ code, downMs: 1000 + typist.onset(sd) })));
  if (chord === null) throw new Error('A chord of the test has too few keys.');
  return chord;
}
