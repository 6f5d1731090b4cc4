import { test as prop } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { factsOf } from '../../../src/core/findings/facts.ts';
import { placeMissing } from '../../../src/core/findings/place-missing.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { needText } from '../../../src/core/keymap/need.ts';
import { checkKeymap } from '../../../src/core/keymap/read.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { factsFor, type Sketch } from './design.ts';
import { afterMend } from './taking-a-mend.ts';

const places = (edits: readonly Edit[]) =>
  edits.map((edit) => (edit.edit === 'bind' ? `${edit.place.layer} ${edit.place.key}` : edit.edit));

describe('giving all missing needs a place', () => {
  test.each<[string, Sketch, { bound: number; placed: string[]; left: string[] }]>([
    [
      'gives each its own while there are any',
      { layers: { base: 'a b c d e ShiftLeft · · Tab Space' }, needs: ['x', 'y', 'a'] },
      { bound: 2, placed: ['x', 'y'], left: [] },
    ],
    [
      'gives none to what another’s key brings with it',
      { layers: { base: 'a b c d e ShiftLeft · · Tab Space' }, needs: ['!', 'X', '1', 'x'] },
      { bound: 2, placed: ['!', 'X', '1', 'x'], left: [] },
    ],
    [
      'lets a modifier come first, since it brings what it makes',
      { layers: { base: 'a b c d e f · g Tab Space' }, needs: ['A', 'B', 'key:ShiftLeft'] },
      { bound: 1, placed: ['A', 'B', 'key:ShiftLeft'], left: [] },
    ],
    [
      'brings Shift where the design has none and much is made with it',
      { layers: { base: 'a b c d e f · g · Space' }, needs: ['A', 'B', 'x'] },
      { bound: 2, placed: ['A', 'B', 'x'], left: [] },
    ],
    [
      'brings no Shift for one character',
      { layers: { base: 'a b c d e f · g · Space' }, needs: ['A', 'x'] },
      { bound: 2, placed: ['A', 'x'], left: [] },
    ],
    [
      'says what finds none',
      { layers: { base: 'a b c d e ShiftLeft · f Tab Space' }, needs: ['x', 'y', '≥'] },
      { bound: 1, placed: ['x'], left: ['y', '≥'] },
    ],
    [
      'goes on to a layer that is held',
      { layers: { base: 'a b c d e f g h @up Space', up: '1 · 2 3 · · · · · ·' }, needs: ['x', 'y'] },
      { bound: 2, placed: ['x', 'y'], left: [] },
    ],
    [
      'does nothing where nothing is missing',
      { layers: { base: 'a b c d e f · h i Space' }, needs: ['a'] },
      { bound: 0, placed: [], left: [] },
    ],
  ])('%s', (_, sketch, { bound, placed, left }) => {
    const placing = placeMissing(factsFor(sketch));
    expect(new Set(places(placing.edits)).size).toBe(bound);
    expect(placing.placed.map(needText)).toEqual(placed);
    expect(placing.left.map(needText)).toEqual(left);
  });

  prop.prop([keymapArbitrary({ maxKeys: 7 })], { numRuns: 100, interruptAfterTimeLimit: 10_000 })(
    'on random keymaps it binds only what was empty, takes no need away, and tells what it has done',
    (keymap) => {
      const own = ['a', 'Q', '!', ' ', '~', '≥', 'key:Enter', 'key:ShiftLeft', 'shortcut:Control+KeyC'];
      const asked = { ...keymap, needs: { lists: [], own, waived: [] } };
      const before = factsOf(asked, usHost);
      const { edits, placed, left } = placeMissing(before);
      for (const edit of edits) {
        if (edit.edit !== 'bind') throw new Error(`an edit ${edit.edit}`);
        const layer = asked.layers.find(({ id }) => id === edit.place.layer);
        expect(layer?.places).not.toHaveProperty([edit.place.key]);
      }
      const after = afterMend(asked, { title: 'all', edits });
      expect(checkKeymap(after).ok).toBe(true);
      const missing = (facts: typeof before) =>
        facts.needs.flatMap(({ need, route }) => (route === null ? [needText(need)] : []));
      expect(missing(factsOf(after, usHost))).toEqual(left.map(needText));
      expect(new Set([...placed, ...left].map(needText))).toEqual(new Set(missing(before)));
    },
  );
});
