import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { rehearse } from '../../../src/core/rehearse/recorder.ts';
import { plainText, shownText } from '../../../src/core/rehearse/shown-text.ts';
import { typedBy } from '../../../src/core/rehearse/typed-by.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { english, plainKeymap } from '../typist/plain-board.ts';

const keymap = plainKeymap();
const written = (text: string, wpm: number, seed: number) =>
  typedBy(keymap, usHost, text, { person: personAt(wpm), seed }, null);

function out(events: ReturnType<typeof written>['events']): string {
  const run = rehearse(keymap, usHost, events);
  if (!run.ok) throw new Error(run.problem.reason);
  return plainText(shownText(run.value.items).tokens);
}

/** From press to press within words, ms. */
function gapsOf(wpm: number, seed: number): number[] {
  const text =
    'the tide gauge reads low again and the keeper writes it down before the evening boat comes in';
  const { events } = typedBy(keymap, usHost, text, { person: personAt(wpm), seed }, english);
  const downs = events.filter(({ type }) => type === 'down').map(({ t }) => t);
  return downs
    .map((t, at) => t - (downs[at - 1] ?? 0))
    .filter((_, at) => at > 0 && text[at] !== ' ' && text[at - 1] !== ' ');
}

describe('a text as presses', () => {
  test('a design that leaves nothing to decide gives back the text, whoever types it', () => {
    for (const [wpm, seed] of [
      [30, 1],
      [75, 2],
      [110, 3],
    ] as const)
      expect(out(written('the tide gauge reads low, again.', wpm, seed).events)).toBe(
        'the tide gauge reads low, again.',
      );
  });

  test('the same seed gives the same presses, another seed others', () => {
    expect(written('low tide', 60, 7)).toEqual(written('low tide', 60, 7));
    expect(written('low tide', 60, 7).events).not.toEqual(written('low tide', 60, 8).events);
  });

  // α of the table in public/typist.md (136M Keystrokes, Dhakal et al. 2018): the median typist's from letter to letter.
  test.each([
    ['average', 48.5, 160],
    ['very fast', 99.1, 94],
  ])('%s typists: letters follow each other as in the study, within a tenth', (_, wpm, medianMs) => {
    const gaps = Array.from({ length: 40 }, (_, seed) => gapsOf(wpm, seed)).flat();
    const median = gaps.toSorted((one, other) => one - other)[gaps.length >> 1] ?? 0;
    expect(median / medianMs).toBeGreaterThan(0.9);
    expect(median / medianMs).toBeLessThan(1.1);
  });

  test('what the design cannot type is named and left out', () => {
    const { missing, meant, events } = written('low £ tide £', 60, 1);
    expect([missing, meant]).toEqual([['£'], 'low  tide ']);
    expect(out(events)).toBe(meant);
  });
});
