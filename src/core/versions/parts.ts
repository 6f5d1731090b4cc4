import type { Binding, Board, Chord, DiaryNote, Host, Keymap, Layer, Timing } from '../keymap/types.ts';

/** What a part of a design is worth; undefined where the design lacks it. */
export interface PartValues {
  readonly name: string;
  readonly notes: string;
  readonly board: Board;
  readonly hosts: readonly Host[];
  /** One field of the timing of the whole design. */
  readonly timing: Timing;
  readonly 'need list': true;
  readonly 'own need': true;
  /** Why it is let off. */
  readonly 'waived need': string;
  /** A layer without what its keys do. */
  readonly layer: Omit<Layer, 'id' | 'places'>;
  readonly place: Binding;
  readonly chord: Chord;
  readonly note: DiaryNote;
  readonly 'layer order': readonly string[];
}

export type PartKind = keyof PartValues;

/** A part of one kind; the id tells it from others: an id, a layer and a key, a need as it is written. */
export interface PartOf<Kind extends PartKind> {
  readonly kind: Kind;
  readonly id: string;
  readonly value: PartValues[Kind];
}

export type Part = { readonly [Kind in PartKind]: PartOf<Kind> }[PartKind];

/** Whether a part is of a kind. */
export function isOfKind<Kind extends PartKind>(
  part: { readonly kind: PartKind; readonly id: string; readonly value: unknown },
  kind: Kind,
): part is PartOf<Kind> {
  return part.kind === kind;
}

/** The name of a part among all parts of a design. */
export function partName(kind: PartKind, id: string): string {
  return `${kind} ${id}`;
}

/** Between the layer and the key of a place; no id holds a space. */
export function placeId(layer: string, key: string): string {
  return `${layer} ${key}`;
}

/**
 * A design taken apart: what can be changed without the rest. Only the order of layers is a part; that of all else is left
 * to whoever puts parts together again.
 */
export function partsOf(keymap: Keymap): ReadonlyMap<string, Part> {
  const { needs, chords = [], diary = [], layers } = keymap;
  const parts: readonly Part[] = [
    { kind: 'name', id: '', value: keymap.name },
    { kind: 'notes', id: '', value: keymap.notes ?? '' },
    { kind: 'board', id: '', value: keymap.board },
    { kind: 'hosts', id: '', value: keymap.hosts },
    ...Object.entries(keymap.timing ?? {}).map(
      ([id, value]) => ({ kind: 'timing', id, value: { [id]: value } }) as const,
    ),
    ...(needs?.lists ?? []).map((id) => ({ kind: 'need list', id, value: true }) as const),
    ...(needs?.own ?? []).map((id) => ({ kind: 'own need', id, value: true }) as const),
    ...(needs?.waived ?? []).map(({ need, why }) => ({ kind: 'waived need', id: need, value: why }) as const),
    ...layers.map(({ id, places: _, ...value }) => ({ kind: 'layer', id, value }) as const),
    ...layers.flatMap(({ id, places }) =>
      Object.entries(places).map(([key, value]) => ({ kind: 'place', id: placeId(id, key), value }) as const),
    ),
    ...chords.map((value) => ({ kind: 'chord', id: value.id, value }) as const),
    ...diary.map((value) => ({ kind: 'note', id: value.id, value }) as const),
  ];
  return new Map(parts.map((part) => [partName(part.kind, part.id), part]));
}
