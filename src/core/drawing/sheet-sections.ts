import { keyName } from '../board/key-name.ts';
import { entryWords } from '../findings/entry-words.ts';
import { chordDoes, legendOf } from '../host/legend.ts';
import { layerWords } from '../keymap/action-words.ts';
import { bindingOn } from '../keymap/lookup.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { Chord, KeyId, LayerId } from '../keymap/types.ts';
import { wrapped } from './set-text.ts';
import {
  ASIDE_LOOK,
  hangingBlocks,
  headBlock,
  linesAt,
  rightAt,
  type Setting,
  SMALL_LOOK,
  TABLE_LOOK,
} from './sheet-blocks.ts';
import type { Block } from './sheet-flow.ts';
import { lineMark, linesMm, type Mark } from './sheet-marks.ts';
import type { SheetNote } from './sheet-notes.ts';
import type { SheetSource } from './sheet-source.ts';

const RUNG_INDENT_MM = 9;

/** The ladder at large, its highest rung on top: each layer's number, name, and how one gets in as a sentence. */
export function ladderBlocks(source: SheetSource, setting: Setting): readonly Block[] {
  const { layers } = source.keymap;
  const shown = [0, ...source.rungs].toReversed();
  const rows = shown.flatMap((number) => {
    const layer = layers[number];
    if (layer === undefined) return [];
    const { sentence } = entryWords(source.facts, layer.id);
    return [rungBlock(number, layer.name, sentence, setting)];
  });
  return [headBlock(layers.length === 1 ? 'One layer' : 'The ladder', setting), ...rows];
}

function rungBlock(number: number, name: string, sentence: string, { type, width }: Setting): Block {
  const inner = width - RUNG_INDENT_MM;
  const names = wrapped(type, 'sans', 9, name, inner);
  const words = wrapped(type, ASIDE_LOOK.face, ASIDE_LOOK.sizePt, sentence, inner);
  const look = { ...TABLE_LOOK, sizePt: 9 };
  const namesMm = linesMm(names.length, 9);
  const height = namesMm + linesMm(words.length, ASIDE_LOOK.sizePt) + 1.4;
  return {
    height,
    draw: (x, y) => [
      barMark(x, y, height, number),
      ...rightAt(type, String(number), x + RUNG_INDENT_MM - 2.4, y, look),
      ...linesAt(names, x + RUNG_INDENT_MM, y, look),
      ...linesAt(words, x + RUNG_INDENT_MM, y + namesMm, ASIDE_LOOK),
    ],
  };
}

function barMark(x: number, y: number, height: number, number: number): Mark {
  const tall = height - 0.9;
  return {
    mark: 'box',
    x: x + 0.8,
    y: y + tall / 2,
    width: 1.6,
    height: tall,
    rotation: 0,
    radius: 0,
    ...(number === 0 ? { stroke: 'hairline', strokeMm: 0.18 } : { fill: `layer-${number}` }),
  };
}

const NUMBER_MM = 6;
const WINDOW_MM = 13;
/** The part of what is left that the keys take; the rest is for what they give. */
const KEYS = 0.5;

/** The table of chords: number, keys by what they type, what they give, and the window. */
export function chordBlocks(
  source: SheetSource,
  setting: Setting,
  unnumbered: ReadonlySet<string>,
): readonly Block[] {
  const chords = chordsOf(source.keymap);
  if (chords.length === 0) return [];
  const shared = sharedLayers(chords);
  // Said once where it holds for all, and not in every row.
  const shown = shared === null ? chords : chords.map(({ layers: _, ...chord }) => chord);
  const rows = shown.map((chord, at) => chordRow(chord, at + 1, source, setting, unnumbered.has(chord.id)));
  const where = shared === null ? [] : [`All of them on ${namesOf(shared, source)} only.`];
  return [
    headBlock('Chords, pressed together', setting),
    ...where.flatMap((text) => hangingBlocks('', text, 0, setting, { sign: ASIDE_LOOK, text: ASIDE_LOOK })),
    columnHeads(setting),
    ...rows,
  ];
}

/** The layers on which every chord is live, where several name the very same; else null. */
function sharedLayers([first, ...rest]: readonly Chord[]): readonly LayerId[] | null {
  const layers = first?.layers;
  if (layers === undefined || rest.length === 0) return null;
  return rest.every((chord) => chord.layers?.join(' ') === layers.join(' ')) ? layers : null;
}

function namesOf(layers: readonly LayerId[], { keymap }: SheetSource): string {
  return layers.map((layer) => layerWords(keymap, layer)).join(', ');
}

function columnHeads({ type, width }: Setting): Block {
  const gives = givesAt(width);
  return {
    height: linesMm(1, SMALL_LOOK.sizePt) + 0.8,
    keepsWithNext: true,
    draw: (x, y) => [
      ...linesAt(['keys'], x + NUMBER_MM, y, SMALL_LOOK),
      ...linesAt(['give'], x + gives, y, SMALL_LOOK),
      ...rightAt(type, 'within', x + width, y, SMALL_LOOK),
    ],
  };
}

function givesAt(width: number): number {
  return NUMBER_MM + (width - NUMBER_MM - WINDOW_MM) * KEYS;
}

function chordRow(chord: Chord, number: number, source: SheetSource, setting: Setting, bare: boolean): Block {
  const { type, width } = setting;
  const gives = givesAt(width);
  const wrap = (text: string, wide: number) => wrapped(type, TABLE_LOOK.face, TABLE_LOOK.sizePt, text, wide);
  const keys = wrap(keysText(chord, source, bare), gives - NUMBER_MM - 1.5);
  const given = wrap(givesText(chord, source), width - WINDOW_MM - gives);
  const height = linesMm(Math.max(keys.length, given.length), TABLE_LOOK.sizePt) + 1;
  return {
    height,
    draw: (x, y) => [
      lineMark([x, y - 0.1], [x + width, y - 0.1], 'hairline', 0.1),
      ...rightAt(type, String(number), x + NUMBER_MM - 2, y + 0.4, TABLE_LOOK),
      ...linesAt(keys, x + NUMBER_MM, y + 0.4, TABLE_LOOK),
      ...linesAt(given, x + gives, y + 0.4, TABLE_LOOK),
      ...rightAt(type, `${Math.round(chord.windowMs * 10) / 10} ms`, x + width, y + 0.4, TABLE_LOOK),
    ],
  };
}

/** The keys by what they type on the base layer; by their names where the number found no room on the board. */
function keysText(chord: Chord, source: SheetSource, byName: boolean): string {
  const { board } = source.keymap;
  return chord.keys.map((key) => (byName ? keyName(board, key) : shortName(key, source))).join(' + ');
}

function shortName(key: KeyId, source: SheetSource): string {
  const [base] = source.keymap.layers;
  const tap = base && bindingOn(base, key)?.tap;
  const legend = tap === undefined ? '' : legendOf(tap, source);
  return legend === '' || legend.length > 6 ? keyName(source.keymap.board, key) : legend;
}

function givesText(chord: Chord, source: SheetSource): string {
  const words = chordDoes(chord, source);
  if (chord.layers === undefined) return words;
  return `${words} (on ${namesOf(chord.layers, source)})`;
}

/** What found no room on its key. */
export function noteBlocks(notes: readonly SheetNote[], setting: Setting): readonly Block[] {
  if (notes.length === 0) return [];
  const looks = { sign: SMALL_LOOK, text: TABLE_LOOK };
  const indent = notes.length > 99 ? 9 : 7;
  const rows = notes.flatMap(({ number, text }) => hangingBlocks(`§${number}`, text, indent, setting, looks));
  return [headBlock('Where a key had no room', setting), ...rows];
}
