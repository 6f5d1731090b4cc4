import { keyName } from '../board/key-name.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { layerWords } from '../keymap/action-words.ts';
import { timingOf } from '../keymap/timing.ts';
import type { BoardKey, ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';
import type { BoardChange } from './board-changes.ts';
import { type BothTold, bindingWords, timingWords } from './change-words.ts';
import { chordKeysWords, chordWords } from './chord-words.ts';
import type { Comparison } from './compare.ts';
import type { DesignPart } from './design-changes.ts';
import type { LayerChange } from './layer-changes.ts';

/** One difference in words, with what it is about, so that it can be shown on a board. */
export interface ChangeRow {
  readonly part: 'board' | 'layer' | 'key' | 'chord' | 'design';
  /** Where: "right inner thumb, Symbols"; empty for the design itself. */
  readonly where: string;
  /** What: "( became {". */
  readonly what: string;
  readonly keys: readonly KeyId[];
  readonly layer: LayerId | null;
  readonly chord: ChordId | null;
}

/** Every difference in words: the design, its board, its layers, then key by key and chord by chord. */
export function changeRows(
  comparison: Comparison,
  hosts: { readonly before: HostLayout | null; readonly after: HostLayout | null },
): readonly ChangeRow[] {
  const { before, after } = comparison;
  const told: BothTold = {
    before: { keymap: before, host: hosts.before },
    after: { keymap: after, host: hosts.after },
  };
  return [
    ...designRows(comparison),
    ...comparison.board.map((change) => boardRow(before, after, change)),
    ...comparison.layers.map((change) => layerRow(comparison, change)),
    ...comparison.places.map(({ key, layer, before: was, after: is }): ChangeRow => {
      const board = after.board.keys.some(({ id }) => id === key) ? after.board : before.board;
      const on = layer.after ?? layer.before;
      return {
        ...NOTHING,
        part: 'key',
        where: `${keyName(board, key)}, ${on?.name ?? ''}`,
        what: bindingWords(was, is, told) || OTHERWISE,
        keys: [key],
        layer: on?.id ?? null,
      };
    }),
    ...comparison.chords.map((pair): ChangeRow => {
      const [keymap, chord] = pair.after === null ? [before, pair.before] : [after, pair.after];
      const where = chord === null ? '' : chordKeysWords(keymap, chord);
      const keys = [...new Set([...(pair.after?.keys ?? []), ...(pair.before?.keys ?? [])])];
      return {
        ...NOTHING,
        part: 'chord',
        where,
        what: chordWords(pair, told) || OTHERWISE,
        keys,
        chord: chord?.id ?? null,
      };
    }),
  ];
}

/** For what differs in the file and in nothing that comes of it. */
const OTHERWISE = 'is written otherwise, with the same effect';

const NOTHING = { keys: [], layer: null, chord: null } as const;

function designRows({ before, after, design }: Comparison): readonly ChangeRow[] {
  const row = (what: string): ChangeRow => ({ ...NOTHING, part: 'design', where: '', what });
  const sentences: Readonly<Record<DesignPart, () => string>> = {
    name: () => `the name “${before.name}” became “${after.name}”`,
    notes: () => 'the notes differ',
    'board name': () => `the board “${before.board.name}” is called “${after.board.name}” now`,
    hosts: () => `computers: ${hostWords(before)} became ${hostWords(after)}`,
    timing: () => `timing of the whole design: ${timingWords(timingOf(before), timingOf(after)).join('; ')}`,
    diary: () => `the diary has ${notes(after)} instead of ${notes(before)}, or other ones`,
  };
  return [
    ...design.what.map((part) => row(sentences[part]())),
    ...(design.needsAdded.length === 0 ? [] : [row(`needs that came: ${listed(design.needsAdded)}`)]),
    ...(design.needsGone.length === 0 ? [] : [row(`needs that went: ${listed(design.needsGone)}`)]),
  ];
}

function hostWords({ hosts }: Keymap): string {
  return hosts
    .map(({ system, layout, variant, corrections = [] }) => {
      const name = [system, layout, variant].join(' ').trim();
      return corrections.length === 0 ? name : `${name} with ${corrections.length} corrections`;
    })
    .join(', ');
}

function notes({ diary = [] }: Keymap): string {
  return diary.length === 1 ? '1 note' : `${diary.length} notes`;
}

/** How many names a sentence holds; the rest is counted. */
const NAMED = 12;

function listed(names: readonly string[]): string {
  const more = names.length - NAMED;
  return names.slice(0, NAMED).join(', ') + (more > 0 ? ` and ${more} more` : '');
}

function boardRow(before: Keymap, after: Keymap, change: BoardChange): ChangeRow {
  const { key } = change;
  const board = change.what === 'gone' ? before.board : after.board;
  const row = { ...NOTHING, part: 'board', where: keyName(board, key), keys: [key] } as const;
  if (change.what === 'added') return { ...row, what: 'the key is new' };
  if (change.what === 'gone') return { ...row, what: 'the key is gone' };
  const { movedMm, turned, resized, otherFinger } = change;
  const [was, is] = [before.board, after.board].map(({ keys }) => keys.find(({ id }) => id === key));
  const parts = [
    ...(movedMm >= UNSEEN ? [`lies ${movedMm.toFixed(1)} mm from where it was`] : []),
    ...(turned && was && is ? [`turned from ${was.rotation.toFixed(0)}° to ${is.rotation.toFixed(0)}°`] : []),
    ...(resized && is ? [`its cap is ${is.width} × ${is.height} mm now`] : []),
    ...(otherFinger && was && is ? [`${fingerOf(was)} became ${fingerOf(is)}`] : []),
  ];
  return { ...row, what: parts.join('; ') };
}

const UNSEEN = 0.05;

function fingerOf({ hand, finger, home }: BoardKey): string {
  return `${hand} ${finger}${home ? ', home' : ''}`;
}

function layerRow({ before, after }: Comparison, { what, layer }: LayerChange): ChangeRow {
  const now = layer.after ?? layer.before;
  const row = { ...NOTHING, part: 'layer', where: now?.name ?? '', layer: now?.id ?? null } as const;
  const names = (keymap: Keymap, ids: readonly LayerId[]) =>
    ids.map((id) => layerWords(keymap, id)).join(' and ');
  switch (what) {
    case 'added':
      return { ...row, what: `the layer is new, ${counted(Object.keys(layer.after?.places ?? {}).length)}` };
    case 'gone':
      return {
        ...row,
        what: `the layer is gone, ${counted(Object.keys(layer.before?.places ?? {}).length)}`,
      };
    case 'renamed':
      return { ...row, what: `was called ${layer.before?.name ?? ''}` };
    case 'moved': {
      const below = after.layers[after.layers.findIndex(({ id }) => id === layer.after?.id) - 1];
      return { ...row, what: `lies above ${below?.name ?? ''} now` };
    }
    case 'comes on otherwise': {
      const [was, is] = [layer.before?.onWhile, layer.after?.onWhile];
      if (is !== undefined) return { ...row, what: `comes on while ${names(after, is)} are on` };
      return { ...row, what: `no longer comes on while ${names(before, was ?? [])} are on` };
    }
  }
}

function counted(keys: number): string {
  return keys === 1 ? '1 key' : `${keys} keys`;
}
