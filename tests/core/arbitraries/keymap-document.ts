import fc from 'fast-check';
import type { Correction, DiaryNote, Host, Keymap, MadeFrom, Needs } from '../../../src/core/keymap/types.ts';
import { grownKeymapArbitrary } from './grown-keymap.ts';
import type { KeymapChoice } from './keymap-arbitrary.ts';

/** Texts of people: any Unicode, quotation marks and markup among them; no line break where a line is wanted. */
const lineArbitrary = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
  .map((text) => text.replace(/[\n\r]/g, ' ').slice(0, 40) || '-');

const mm = fc.integer({ min: -500, max: 500 }).map((tenths) => tenths / 10 + 0);

const columnsArbitrary = fc.array(
  fc.record({
    finger: fc.constantFrom('index' as const, 'middle' as const, 'ring' as const, 'little' as const),
    keys: fc.integer({ min: 1, max: 6 }),
    homeRow: fc.option(fc.integer({ min: 0, max: 5 })),
    staggerMm: mm,
    splayDeg: fc.integer({ min: -45, max: 45 }),
  }),
  { minLength: 1, maxLength: 8 },
);

const thumbArbitrary = fc.record({
  keys: fc.integer({ min: 0, max: 6 }),
  radiusMm: fc.integer({ min: 20, max: 300 }),
  inwardsMm: mm,
  downMm: mm,
  turnDeg: fc.integer({ min: -90, max: 90 }),
  stepDeg: fc.integer({ min: -45, max: 45 }),
});

const halfTurn = fc.integer({ min: -45, max: 45 });

const madeFromArbitrary: fc.Arbitrary<MadeFrom> = fc.record(
  {
    columns: columnsArbitrary,
    pitchXMm: fc.integer({ min: 10, max: 40 }),
    pitchYMm: fc.integer({ min: 10, max: 40 }),
    capGapMm: fc.integer({ min: 0, max: 5 }),
    thumb: thumbArbitrary,
    gapMm: fc.integer({ min: 0, max: 600 }),
    turnDeg: halfTurn,
    left: fc.record({
      columns: columnsArbitrary,
      thumb: thumbArbitrary,
      turnDeg: halfTurn,
      downMm: mm,
    }),
  },
  {
    requiredKeys: ['columns', 'pitchXMm', 'pitchYMm', 'capGapMm', 'thumb', 'gapMm', 'turnDeg'],
  },
);

const needArbitrary = fc.constantFrom('a', ' ', '≥', 'key:ArrowLeft', 'shortcut:Control+Alt+Delete', '👩‍🚀');

const needsArbitrary: fc.Arbitrary<Needs> = fc.record({
  lists: fc.array(fc.constantFrom('ascii', 'editing', 'cldr:pt'), { maxLength: 3 }),
  own: fc.array(needArbitrary, { maxLength: 4 }),
  waived: fc.array(fc.record({ need: needArbitrary, why: lineArbitrary }), { maxLength: 2 }),
});

const correctionArbitrary: fc.Arbitrary<Correction> = fc.record({
  code: fc.constantFrom('KeyE' as const, 'IntlBackslash' as const, 'Space' as const),
  level: fc.constantFrom('plain' as const, 'shift' as const, 'level3' as const, 'shift-level3' as const),
  gives: fc.constantFrom('', 'é', '"', ' ', 'dead_acute', '👩‍🚀'),
});

const hostArbitrary: fc.Arbitrary<Host> = fc.record(
  {
    system: fc.constantFrom('linux' as const, 'windows' as const, 'macos' as const),
    layout: fc.constantFrom('us', 'pt', 'de'),
    variant: fc.constantFrom('', 'nodeadkeys'),
    corrections: fc.uniqueArray(correctionArbitrary, {
      maxLength: 3,
      selector: ({ code, level }) => `${code} ${level}`,
    }),
  },
  { requiredKeys: ['system', 'layout', 'variant'] },
);

/** Notes about anything that the keymap has; their ids are made unique by their place. */
export function diaryArbitrary(keymap: Keymap): fc.Arbitrary<readonly DiaryNote[]> {
  const chords = keymap.chords ?? [];
  const note = fc.record(
    {
      text: lineArbitrary,
      keys: fc.uniqueArray(fc.constantFrom(...keymap.board.keys.map(({ id }) => id)), {
        minLength: 1,
        maxLength: 3,
      }),
      layer: fc.constantFrom(...keymap.layers.map(({ id }) => id)),
      ...(chords.length > 0 ? { chord: fc.constantFrom(...chords.map(({ id }) => id)) } : {}),
      writtenAt: fc.constantFrom(
        '2026-05-04T18:30:00Z',
        '2024-02-29T00:00+05:30',
        '1999-12-31T23:59:59.999-08:00',
      ),
      state: fc.constantFrom('9f86d081', 'v1.2_a-b'),
      tickedOff: fc.boolean(),
    },
    { requiredKeys: ['text', 'writtenAt', 'state', 'tickedOff'] },
  );
  return fc.array(note, { maxLength: 3 }).map((notes) => notes.map((one, at) => ({ id: `n${at}`, ...one })));
}

/** Key ids that trip code up: like indices, like names that objects have, at the limits of the length. */
const ODD_IDS = ['1', '0', 'constructor', 'toString', '-', '_', 'a-b_C9', 'ABCDEFGHIJKLMNOP'];

/** Gives the keys of a keymap odd ids, wherever they are named. */
function renamed(keymap: Keymap, shift: number): Keymap {
  const names = new Map(
    keymap.board.keys.map(({ id }, at): [string, string] => [
      id,
      ODD_IDS[(at + shift) % ODD_IDS.length] ?? id,
    ]),
  );
  const to = (id: string) => names.get(id) ?? id;
  return {
    ...keymap,
    board: { ...keymap.board, keys: keymap.board.keys.map((key) => ({ ...key, id: to(key.id) })) },
    layers: keymap.layers.map((layer) => ({
      ...layer,
      places: Object.fromEntries(Object.entries(layer.places).map(([id, binding]) => [to(id), binding])),
    })),
    ...(keymap.chords
      ? { chords: keymap.chords.map((chord) => ({ ...chord, keys: chord.keys.map(to) })) }
      : {}),
  };
}

/**
 * Random valid documents with all that a file may hold beside the keymap itself: notes, needs, several computers,
 * the parameters of the board, odd ids, any text in names. For the laws of reading, writing, comparing and links.
 */
export function documentArbitrary(choice: KeymapChoice = {}): fc.Arbitrary<Keymap> {
  const more = fc.record(
    {
      name: lineArbitrary,
      notes: fc.string({ unit: 'grapheme', maxLength: 40 }),
      hosts: fc.array(hostArbitrary, { minLength: 1, maxLength: 3 }),
      needs: needsArbitrary,
    },
    { requiredKeys: ['name', 'hosts'] },
  );
  return fc
    .tuple(
      grownKeymapArbitrary(choice),
      more,
      fc.option(madeFromArbitrary),
      lineArbitrary,
      fc.option(fc.nat(7)),
    )
    .map(([keymap, extra, madeFrom, boardName, shift]) => {
      const named = shift === null ? keymap : renamed(keymap, shift);
      const board = { ...named.board, name: boardName, ...(madeFrom ? { madeFrom } : {}) };
      return { ...named, ...extra, board };
    })
    .chain((document) =>
      fc
        .option(diaryArbitrary(document), { nil: undefined })
        .map((diary) => (diary ? { ...document, diary } : document)),
    );
}
