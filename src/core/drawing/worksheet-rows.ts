import { keyName } from '../board/key-name.ts';
import { boardRows } from '../board/rows.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { layerWords } from '../keymap/action-words.ts';
import { bindingOn } from '../keymap/lookup.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { Action, Binding, Chord, KeyId, Keymap, Layer } from '../keymap/types.ts';
import { actionText } from './action-text.ts';
import { strokeCodes, strokesOfAction, strokeUsages } from './stroke-words.ts';
import { bindingTimingText, chordTimingText } from './timing-text.ts';

/** What one side of a binding does: in words, as W3C codes, as USB HID usages in hex. Empty texts where there is nothing. */
export interface WorksheetSide {
  readonly words: string;
  readonly codes: string;
  readonly usages: string;
}

/** One line of the worksheet: a key on a layer, or a chord with its action in `tap`. */
export interface WorksheetRow {
  readonly part: 'key' | 'chord';
  /** The chord's name; empty for a key. */
  readonly name: string;
  /** Names of the layer, or of the layers on which the chord is live ("every layer"). */
  readonly layer: string;
  /** Ids of the key or keys, with spaces. */
  readonly keys: string;
  /** Where they lie: "right index home". */
  readonly where: string;
  readonly tap: WorksheetSide;
  readonly hold: WorksheetSide;
  readonly timing: string;
}

const NOTHING: WorksheetSide = { words: '', codes: '', usages: '' };

/** Every key of every layer in reading order, layer by layer from the base up, then the chords in document order. */
export function worksheetRows(keymap: Keymap, host: HostLayout): readonly WorksheetRow[] {
  const keys = boardRows(keymap.board).flat();
  return [
    ...keymap.layers.flatMap((layer) => keys.map((key) => keyRow(keymap, host, layer, key))),
    ...chordsOf(keymap).map((chord) => chordRow(keymap, host, chord)),
  ];
}

function keyRow(keymap: Keymap, host: HostLayout, layer: Layer, key: KeyId): WorksheetRow {
  const binding = bindingOn(layer, key);
  return {
    part: 'key',
    name: '',
    layer: layer.name,
    keys: key,
    where: keyName(keymap.board, key),
    ...(binding === undefined ? unbound(keymap, layer) : bound(keymap, host, binding)),
  };
}

function unbound(keymap: Keymap, layer: Layer): Pick<WorksheetRow, 'tap' | 'hold' | 'timing'> {
  const words = layer === keymap.layers[0] ? 'does nothing' : 'falls through';
  return { tap: { ...NOTHING, words }, hold: NOTHING, timing: '' };
}

function bound(
  keymap: Keymap,
  host: HostLayout,
  binding: Binding,
): Pick<WorksheetRow, 'tap' | 'hold' | 'timing'> {
  return {
    tap: withShifted(side(keymap, host, binding.tap), side(keymap, host, binding.onShift)),
    hold: side(keymap, host, binding.hold),
    timing: bindingTimingText(keymap, binding),
  };
}

function side(keymap: Keymap, host: HostLayout, action: Action | undefined): WorksheetSide {
  if (action === undefined) return NOTHING;
  const words = actionText(keymap, action);
  const strokes = strokesOfAction(action, host);
  if (strokes === null) return { words, codes: 'no route on this host layout', usages: '' };
  return { words, codes: strokeCodes(strokes), usages: strokeUsages(strokes) };
}

/** A tap with what comes in its place under Shift behind it. */
function withShifted(tap: WorksheetSide, shifted: WorksheetSide): WorksheetSide {
  if (shifted.words === '') return tap;
  const behind = (one: string, other: string) => `${one}; under Shift: ${other === '' ? 'none' : other}`;
  return {
    words: behind(tap.words, shifted.words),
    codes: behind(tap.codes, shifted.codes),
    usages: behind(tap.usages, shifted.usages),
  };
}

function chordRow(keymap: Keymap, host: HostLayout, chord: Chord): WorksheetRow {
  return {
    part: 'chord',
    name: chord.name ?? chord.id,
    layer: chord.layers?.map((layer) => layerWords(keymap, layer)).join(', ') ?? 'every layer',
    keys: chord.keys.join(' '),
    where: chord.keys.map((key) => keyName(keymap.board, key)).join(' + '),
    tap: withShifted(side(keymap, host, chord.action), side(keymap, host, chord.onShift)),
    hold: side(keymap, host, chord.hold),
    timing: chordTimingText(keymap, chord),
  };
}
