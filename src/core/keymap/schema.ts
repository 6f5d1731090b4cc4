import * as z from 'zod/mini';
import { CODES, MODIFIERS } from './codes.ts';
import { LIMITS } from './limits.ts';

/**
 * The shape of a neutral keymap, version 1: the one source of the types, of reading and of the published
 * JSON Schema. What a shape cannot say (references, unique ids, one grapheme cluster) is in `references.ts` and
 * `reader-rules.ts`.
 * The words given to a pattern or a list of values say what is expected, for the reader's sentences.
 * Texts are bounded by patterns with the `u` flag, so that a length counts code points here and in JSON Schema.
 * zod must not make functions out of texts: a strict Content-Security-Policy forbids it, and it is no faster here.
 */
z.config({ jitless: true });

const described = <Schema extends z.core.$ZodType>(
  schema: Schema,
  meta: { id?: string; description?: string; anyOf?: unknown; dependentRequired?: unknown },
): Schema => {
  z.globalRegistry.add(schema, meta);
  return schema;
};

const matching = (pattern: string, expected: string) =>
  z.string().check(z.regex(new RegExp(pattern, 'u'), expected));
const line = (most: number) => matching(`^[^\\n\\r]{1,${most}}$`, `1 to ${most} characters on one line`);
const prose = (least: number, most: number) =>
  matching(`^[\\s\\S]{${least},${most}}$`, `${least} to ${most} characters`);
const between = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
const wholeBetween = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
const listOf = <Item extends z.core.$ZodType>(item: Item, least: number, most: number) =>
  z.array(item).check(z.minLength(least), z.maxLength(most));

/** `__proto__` would match otherwise, and no plain object can hold it as a name. */
const nameIn = (most: number) =>
  matching(`^(?!__proto__$)[A-Za-z0-9_-]{1,${most}}$`, `1 to ${most} of A-Z a-z 0-9 _ - (and not __proto__)`);
const xkbName = (least: number) =>
  matching(`^[A-Za-z0-9_-]{${least},40}$`, `an XKB name: ${least} to 40 of A-Z a-z 0-9 _ -`);

const name = described(line(LIMITS.nameLength), { id: 'name' });
const keyId = described(nameIn(16), { id: 'keyId', description: 'The id of a key: stable and unique.' });
const layerId = described(nameIn(40), { id: 'layerId' });
const chordId = described(nameIn(40), { id: 'chordId' });
const noteId = described(nameIn(40), { id: 'noteId' });
const code = described(z.enum(CODES, 'a W3C code'), {
  id: 'code',
  description: 'A W3C UI Events code value.',
});
const modifier = described(z.enum(MODIFIERS, `a modifier: ${MODIFIERS.join(', ')}`), { id: 'modifier' });
const milliseconds = described(between(0, 10_000), { id: 'milliseconds' });
const finger = z.enum(['thumb', 'index', 'middle', 'ring', 'little']);

export const boardKeySchema = described(
  z.strictObject({
    id: keyId,
    x: between(-2000, 2000),
    y: between(-2000, 2000),
    rotation: between(-360, 360),
    width: between(5, 200),
    height: between(5, 200),
    hand: z.enum(['left', 'right']),
    finger,
    home: z.boolean(),
  }),
  {
    id: 'boardKey',
    description: 'x, y: centre of the cap in mm, y towards the typist; rotation: degrees, clockwise.',
  },
);

/** Columns of one half, from the inner one (index) to the outer one (little). */
const columnsSchema = listOf(
  z.strictObject({
    finger: z.enum(['index', 'middle', 'ring', 'little']),
    keys: wholeBetween(1, 6),
    /** Which key from the top is the finger's home key, counted from 0; null where the finger rests elsewhere. */
    homeRow: z.nullable(wholeBetween(0, 5)),
    /** How far the column's middle row is moved towards the typist, mm. */
    staggerMm: between(-60, 60),
    /** Turn of the column about its middle row, degrees, outwards positive. */
    splayDeg: between(-45, 45),
  }),
  1,
  8,
);

const thumbSchema = z.strictObject({
  keys: wholeBetween(0, 6),
  /** Radius of the arc on which the caps lie, mm. */
  radiusMm: between(20, 300),
  /** Where the inner cap lies from the inner column's middle row: towards the other hand and towards the typist, mm. */
  inwardsMm: between(-150, 150),
  downMm: between(-150, 150),
  /** Turn of the inner cap and turn from one cap to the next, degrees. */
  turnDeg: between(-90, 90),
  stepDeg: between(-45, 45),
});

/** Turn of a half, degrees, the thumbs towards each other positive. */
const halfTurnDeg = between(-45, 45);

/**
 * The parameters of a board of two halves; a one-piece board has its halves close together and not turned. They
 * describe the right half, and the left one is its mirror image unless it has parameters of its own.
 */
export const madeFromSchema = described(
  z.strictObject({
    columns: columnsSchema,
    pitchXMm: between(10, 40),
    pitchYMm: between(10, 40),
    /** Gap between two caps one pitch apart, mm. */
    capGapMm: between(0, 5),
    thumb: thumbSchema,
    /** Between the edges of the two inner columns' cells along the middle line, mm. */
    gapMm: between(0, 600),
    turnDeg: halfTurnDeg,
    left: z.optional(
      z.strictObject({
        columns: columnsSchema,
        thumb: thumbSchema,
        turnDeg: halfTurnDeg,
        /** How far the left half lies nearer to the typist than the right one, mm. */
        downMm: between(-150, 150),
      }),
    ),
  }),
  {
    id: 'madeFrom',
    description:
      'The parameters from which a board of two halves was made: those of the right one, mirrored unless there is left.',
  },
);

export const boardSchema = described(
  z.strictObject({
    name,
    madeFrom: z.optional(madeFromSchema),
    keys: listOf(boardKeySchema, 1, LIMITS.keys),
  }),
  { id: 'board' },
);

const typingActions = [
  z.strictObject({ do: z.literal('key'), code, with: z.optional(listOf(modifier, 0, 8)) }),
  z.strictObject({
    do: z.literal('char'),
    char: described(prose(1, 32), { description: 'One grapheme cluster, NFC.' }),
  }),
  z.strictObject({ do: z.literal('text'), text: prose(1, 64) }),
  z.strictObject({ do: z.literal('nothing') }),
] as const;

export const actionSchema = described(
  z.discriminatedUnion('do', [
    ...typingActions,
    z.strictObject({ do: z.literal('layer'), layer: layerId, mode: z.enum(['while-held', 'latch', 'lock']) }),
    z.strictObject({ do: z.literal('modifier'), code: modifier, mode: z.enum(['latch', 'lock']) }),
    z.strictObject({ do: z.literal('repeat') }),
    z.strictObject({ do: z.literal('word-shift') }),
    z.strictObject({ do: z.literal('board'), label: line(40) }),
  ]),
  { id: 'action' },
);

/** What comes in place of a tap while Shift is on: something that types, or a blank. */
export const shiftedActionSchema = described(z.discriminatedUnion('do', [...typingActions]), {
  id: 'shiftedAction',
});

const timingFields = {
  holdAfterMs: z.optional(milliseconds),
  holdBy: z.optional(z.enum(['time-only', 'press-inside', 'tap-inside'])),
  quietBeforeMs: z.optional(milliseconds),
  againWithinMs: z.optional(milliseconds),
  sameHandTaps: z.optional(z.boolean()),
  tapIfAlone: z.optional(z.boolean()),
};

export const timingSchema = described(z.strictObject(timingFields), { id: 'timing' });

/** JSON Schema for an object with that field; written out in full for validators that are strict about it. */
const having = (field: string) => ({ type: 'object', properties: { [field]: {} }, required: [field] });

export const bindingSchema = described(
  z
    .strictObject({
      tap: z.optional(actionSchema),
      onShift: z.optional(shiftedActionSchema),
      hold: z.optional(actionSchema),
      ...timingFields,
    })
    .check(
      z.refine((binding) => binding.tap !== undefined || binding.hold !== undefined, 'tap, hold or both'),
      z.refine(
        (binding) => binding.onShift === undefined || binding.tap !== undefined,
        'a tap beside onShift, in whose place it comes',
      ),
    ),
  { id: 'binding', anyOf: [having('tap'), having('hold')], dependentRequired: { onShift: ['tap'] } },
);

export const layerSchema = described(
  z.strictObject({
    id: layerId,
    name,
    onWhile: z.optional(listOf(layerId, 2, LIMITS.layers)),
    places: z.record(keyId, bindingSchema),
  }),
  { id: 'layer' },
);

export const chordSchema = described(
  z.strictObject({
    id: chordId,
    name: z.optional(name),
    keys: listOf(keyId, 2, 5),
    windowMs: milliseconds,
    layers: z.optional(listOf(layerId, 1, LIMITS.layers)),
    quietBeforeMs: z.optional(milliseconds),
    release: z.optional(z.enum(['first-up', 'last-up'])),
    action: actionSchema,
    onShift: z.optional(shiftedActionSchema),
    hold: z.optional(actionSchema),
    holdAfterMs: timingFields.holdAfterMs,
    holdBy: timingFields.holdBy,
    againWithinMs: timingFields.againWithinMs,
    tapIfAlone: timingFields.tapIfAlone,
  }),
  { id: 'chord' },
);

export const correctionSchema = described(
  z.strictObject({
    code,
    level: z.enum(['plain', 'shift', 'level3', 'shift-level3']),
    gives: matching(
      '^(?:|dead_[A-Za-z0-9_]{1,40}|[^\\u0000-\\u001f\\u007f-\\u009f]{1,8})$',
      'one character, a dead key such as dead_acute, or an empty text for nothing',
    ),
  }),
  {
    id: 'correction',
    description:
      'A key that this computer reads otherwise than the XKB table says. gives: one grapheme cluster in NFC, a dead ' +
      'key by its XKB name, or empty for nothing.',
  },
);

export const hostSchema = described(
  z.strictObject({
    system: z.enum(['linux', 'windows', 'macos']),
    layout: xkbName(1),
    variant: xkbName(0),
    corrections: z.optional(listOf(correctionSchema, 0, LIMITS.corrections)),
  }),
  { id: 'host', description: 'A computer the board is used on; layout and variant are XKB names.' },
);

const need = described(line(64), {
  id: 'need',
  description: 'The character itself, key:CODE, or shortcut:Modifier+…+CODE.',
});

export const needsSchema = described(
  z.strictObject({
    lists: listOf(line(64), 0, 64),
    own: listOf(need, 0, LIMITS.needs),
    waived: listOf(z.strictObject({ need, why: line(400) }), 0, LIMITS.needs),
  }),
  { id: 'needs' },
);

const NOTE_TIME =
  '^\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])T(?:[01]\\d|2[0-3]):[0-5]\\d' +
  '(?::[0-5]\\d(?:\\.\\d{1,9})?)?(?:Z|[+-](?:[01]\\d|2[0-3]):[0-5]\\d)$';

export const diaryNoteSchema = described(
  z.strictObject({
    id: noteId,
    text: line(400),
    keys: z.optional(listOf(keyId, 1, LIMITS.noteKeys)),
    layer: z.optional(layerId),
    chord: z.optional(chordId),
    writtenAt: matching(NOTE_TIME, 'a date and time with its offset, such as 2026-05-04T18:30:00Z'),
    state: matching('^[A-Za-z0-9._-]{1,80}$', '1 to 80 of A-Z a-z 0-9 . _ -'),
    tickedOff: z.boolean(),
  }),
  {
    id: 'diaryNote',
    description:
      'What the typist noted while using the design. keys, layer, chord: what it is about, none of them: the whole ' +
      'design; writtenAt: RFC 3339; state: a digest of the design as it was then.',
  },
);

export const keymapSchema = described(
  z.strictObject({
    $schema: z.optional(z.string()),
    format: z.literal('neutral-keymap'),
    version: z.literal(1),
    name,
    notes: z.optional(prose(0, LIMITS.notesLength)),
    board: boardSchema,
    hosts: listOf(hostSchema, 1, LIMITS.hosts),
    timing: z.optional(timingSchema),
    needs: z.optional(needsSchema),
    layers: listOf(layerSchema, 1, LIMITS.layers),
    chords: z.optional(listOf(chordSchema, 0, LIMITS.chords)),
    diary: z.optional(listOf(diaryNoteSchema, 0, LIMITS.diaryNotes)),
  }),
  {
    description:
      'A neutral keymap, version 1. Beyond this schema a reader checks: ids are unique; keys, layers and chords that are ' +
      'referred to exist; a layer action does not name the base layer; onWhile names lower layers, each once; onShift is ' +
      'no modifier key; a chord ' +
      'names each key and layer once, a note each key; a char is one grapheme cluster, kept in NFC; a need is written as one; a host ' +
      'corrects each key once a level, and no modifier, to one grapheme cluster in NFC.',
  },
);
