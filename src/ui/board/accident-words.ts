import { actionInWords, type LegendSource, legendOf } from '../../core/host/legend.ts';
import { bindingOn } from '../../core/keymap/lookup.ts';
import { chordsOf } from '../../core/keymap/timing.ts';
import type { HoldBy } from '../../core/keymap/types.ts';
import type { Protection } from '../../core/typist/hold-study.ts';
import type { PressedThing } from '../../core/typist/pressed-things.ts';
import type { ChoicePoint, DamagingRun, SuggestedChoice } from '../../core/typist/study.ts';
import { plainNumber, rangeInWords, rateInWords } from '../../core/typist/uncertainty.ts';

/** A run of presses by what it types: "er", "a Space"; slips have words of their own. */
export function runInWords(things: readonly PressedThing[], source: LegendSource): string {
  if (things.length === 0) return 'slips of two neighbouring fingers';
  const words = things.map((thing) => thingInWords(thing, source));
  return `“${words.join(words.every((word) => [...word].length === 1) ? '' : ' ')}”`;
}

function thingInWords(thing: PressedThing, source: LegendSource): string {
  if (thing.what === 'chord') {
    const chord = chordsOf(source.keymap).find(({ id }) => id === thing.chord);
    return chord === undefined ? '' : actionInWords(chord.action, source);
  }
  const layer = source.keymap.layers.find(({ id }) => id === thing.layer);
  const binding = layer === undefined ? undefined : bindingOn(layer, thing.key);
  const action = thing.asHold ? binding?.hold : (binding?.tap ?? binding?.hold);
  return action === undefined ? '' : legendOf(action, source);
}

/** What a run does, with its counts: "“er”: typed 24 times, about 2 go wrong". */
export function damageInWords(
  { things, typedPer1000Words, misfires }: DamagingRun,
  source: LegendSource,
): string {
  const run = runInWords(things, source);
  if (things.length === 0) return `${run}: ${rateInWords(misfires)}`;
  return `${run}: typed ${plainNumber(typedPer1000Words)} times, ${rateInWords(misfires)} of these`;
}

/** A rate with how sure it is: "about 3, between 1.5 and 6". */
export function surely(rate: number): string {
  const range = rangeInWords(rate);
  return range === '' ? rateInWords(rate) : `${rateInWords(rate)}, ${range}`;
}

/** Misses per 1,000 uses as a person says it: "about 50 in 1,000", "practically none". */
export function missesInWords(misses: number): string {
  return misses < 0.5 ? 'practically none' : `about ${plainNumber(misses)} in 1,000`;
}

/** Why a choice is the suggested one. */
export function reasonInWords(
  { usesPer1000Words, assumed }: SuggestedChoice,
  what: 'chord' | 'hold',
): string {
  const uses = plainNumber(usesPer1000Words);
  const how = assumed
    ? `assumed: ${uses} uses in 1,000 words`
    : `your text uses the ${what} ${uses} times in 1,000 words`;
  return `Fewest accidents in all, a misfire and a miss weighing the same (${how}); of near equals the shortest, for letters wait less.`;
}

/** The picture of a choice in words. */
export function curveInWords(now: ChoicePoint, suggested: SuggestedChoice | null): string {
  const at = suggested === null ? '' : ` Suggested: ${suggested.point.ms} ms.`;
  return `At ${now.ms} ms: misfires ${surely(now.misfires)} in 1,000 words; misses ${missesInWords(now.misses)}.${at}`;
}

/** The rules as the table's heads. */
export const RULE_WORDS: Readonly<Record<HoldBy, string>> = {
  'time-only': 'time only',
  'press-inside': 'a press inside',
  'tap-inside': 'a tap inside',
};

/** The protections as the table's rows. */
export const PROTECTION_WORDS: Readonly<Record<Protection, string>> = {
  none: 'no protection',
  'quiet-before': '150 ms of quiet before',
  'again-within': 'again within 150 ms',
  'same-hand-taps': 'same hand taps',
  all: 'all three',
};

/** Which part of the figures is an assumption. */
export function assumptionsInWords(
  what: 'chord' | 'hold',
  isMeasured: boolean,
  spreadFactor: number,
): readonly string[] {
  const spread = isMeasured
    ? 'The spread of chord keys is yours, as measured.'
    : spreadFactor > 1
      ? `Keys of a chord are assumed to come ${spreadFactor} times as far apart as skilled hands’.`
      : 'Assumed: keys of a chord come as close together as skilled hands’ do.';
  return [
    ...(what === 'chord'
      ? [spread]
      : ['Assumed: a hold that is meant lasts as long as one of Shift in the sample.']),
    `Assumed: a ${what} that is meant follows the key before it as any letter does.`,
    'Estimates in checks against what people typed were off by up to a factor of 2; on a split board, or with other letters on the home row, it may be more.',
  ];
}
