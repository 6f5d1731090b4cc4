import { fc } from '@fast-check/vitest';
import { randomLcg } from 'd3-random';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../src/core/keymap/limits.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { FRAGMENT_SIGNS, fragmentOf } from '../../../src/core/link/fragment.ts';
import { designOfFragment, fragmentOfDesign } from '../../../src/store/link/design-link.ts';
import { pack } from '../../../src/store/link/pack.ts';
import { documentArbitrary } from '../../core/arbitraries/keymap-document.ts';
import { fullDesign } from '../../core/link/full-design.ts';
import { sample } from '../sample.ts';

/** The fragment around anything that is packed. */
async function around(content: BlobPart): Promise<string> {
  const fragment = fragmentOf(await pack(content));
  if (!fragment.ok) throw new Error(fragment.problem.found);
  return fragment.value;
}

async function there(keymap: Parameters<typeof fragmentOfDesign>[0]): Promise<string> {
  const fragment = await fragmentOfDesign(keymap);
  if (!fragment.ok) throw new Error(fragment.problem);
  return fragment.value;
}

describe('a design in a link', () => {
  test.each([0.1, 0.5, 0.9])(
    'with 42 keys bound on each of 8 layers and 30 chords it is at most 8 kB (seed %d)',
    async (seed) => {
      const design = fullDesign(seed);
      const fragment = await there(design);
      expect(fragment.length).toBeLessThanOrEqual(FRAGMENT_SIGNS.short);
      const back = await designOfFragment(`#${fragment}`);
      expect(back?.ok && writeKeymap(back.value)).toBe(writeKeymap(design));
    },
  );

  test('any document comes back as its file would', async () => {
    await fc.assert(
      fc.asyncProperty(documentArbitrary({ maxKeys: 4 }), async (keymap) => {
        const back = await designOfFragment(await there(keymap));
        expect(back?.ok && writeKeymap(back.value)).toBe(writeKeymap(keymap));
      }),
      { numRuns: 60 },
    );
  });

  test('one that is too long for a link is refused with the way out', async () => {
    const random = randomLcg(0.3);
    const sign = () => String.fromCodePoint(0x20000 + Math.floor(random() * 0xa000));
    const notes = Array.from({ length: LIMITS.notesLength }, sign).join('');
    const own = [...new Set(Array.from({ length: LIMITS.needs }, sign))];
    const outcome = await fragmentOfDesign({ ...sample, notes, needs: { lists: [], own, waived: [] } });
    expect(outcome.ok ? '' : outcome.problem).toMatch(
      /^This design makes a link of \d+ kB; 64 kB at most .* file instead\.$/,
    );
  });
});

describe('a link that is broken', () => {
  const sentenceOf = async (fragment: string) => {
    const read = await designOfFragment(fragment);
    return read === null || read.ok ? read : read.problem.problems.map(({ sentence }) => sentence).join(' ');
  };

  test('cut off anywhere, or with any sign changed, it is never read as another design', async () => {
    const whole = await there(sample);
    const body = 'design=1.'.length;
    for (let at = body + 1; at < whole.length; at += 7) {
      expect(await sentenceOf(whole.slice(0, at))).toMatch(/^The link holds .*; expected .*\.$/);
      const other = whole[at] === 'A' ? 'B' : 'A';
      const changed = await designOfFragment(whole.slice(0, at) + other + whole.slice(at + 1));
      if (changed?.ok) expect(changed.value).toEqual(sample);
    }
  });

  test('a bomb is broken off at 2 MiB', async () => {
    const bomb = await around(new Uint8Array(16 * LIMITS.fileBytes));
    expect(bomb.length).toBeLessThan(FRAGMENT_SIGNS.most);
    expect(await sentenceOf(bomb)).toBe(
      'The link holds a design that grows beyond 2 MiB; expected 2 MiB at most.',
    );
  });

  test.each([
    ['text that is no JSON', around('hello'), /^No JSON: at line 1/],
    [
      'JSON that is no keymap',
      around('{"format":"neutral-keymap","version":9}'),
      /version 9, which is newer/,
    ],
    ['bytes that are no text', around(Uint8Array.of(0xff, 0xfe)), /bytes that are no text/],
    ['a later version', 'design=7.AAAA', /version 7 of links; expected version 1/],
    ['nothing packed at all', 'design=1.AAAA', /not whole/],
  ])('%s', async (_, fragment, sentence) => {
    expect(await sentenceOf(await fragment)).toMatch(sentence);
  });

  test('another fragment is none of its business', async () => {
    expect(await designOfFragment('#help')).toBeNull();
  });
});
