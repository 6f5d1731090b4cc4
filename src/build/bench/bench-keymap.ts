import type { Code } from '../../core/keymap/codes.ts';
import type { Action, Binding, KeyId, Keymap, Layer } from '../../core/keymap/types.ts';
import { benchBoard } from './bench-board.ts';
import { benchChords } from './bench-chords.ts';

type Places = Record<KeyId, Binding>;

const key = (code: Code): Action => ({ do: 'key', code });
const layerId = (index: number): string => (index === 0 ? 'base' : `layer-${index}`);

/** Ids of a row of the letter block, left to right over both halves. */
function rowKeys(row: number): KeyId[] {
  const columns = [0, 1, 2, 3, 4, 5];
  return [...columns.map((c) => `L${row}${c}`), ...columns.toReversed().map((c) => `R${row}${c}`)];
}

const ROWS: readonly KeyId[] = [...rowKeys(1), ...rowKeys(2), ...rowKeys(3)];

function spread(actions: readonly Action[], keys: readonly KeyId[] = ROWS): Places {
  const places: Places = {};
  for (const [index, action] of actions.entries()) {
    const id = keys[index];
    if (id !== undefined) places[id] = { tap: action };
  }
  return places;
}

const LETTERS: readonly Code[] = [
  ...(['Tab', 'KeyQ', 'KeyW', 'KeyE', 'KeyR', 'KeyT'] as const),
  ...(['KeyY', 'KeyU', 'KeyI', 'KeyO', 'KeyP', 'Backspace'] as const),
  ...(['Escape', 'KeyA', 'KeyS', 'KeyD', 'KeyF', 'KeyG'] as const),
  ...(['KeyH', 'KeyJ', 'KeyK', 'KeyL', 'Semicolon', 'Quote'] as const),
  ...(['ShiftLeft', 'KeyZ', 'KeyX', 'KeyC', 'KeyV', 'KeyB'] as const),
  ...(['KeyN', 'KeyM', 'Comma', 'Period', 'Slash', 'ShiftRight'] as const),
];

/** The modifier that each home key gives while it is held. */
const HOME_HOLDS: Readonly<Record<KeyId, Code>> = {
  L21: 'MetaLeft',
  L22: 'AltLeft',
  L23: 'ControlLeft',
  L24: 'ShiftLeft',
  R24: 'ShiftRight',
  R23: 'ControlRight',
  R22: 'AltLeft',
  R21: 'MetaRight',
};

/** A thumb key that taps a code and holds a layer, or only the code where the design has no such layer. */
function thumb(code: Code, layer: number, layers: number): Binding {
  if (layer >= layers) return { tap: key(code) };
  return {
    tap: key(code),
    hold: { do: 'layer', layer: layerId(layer), mode: 'while-held' },
    holdBy: 'press-inside',
    holdAfterMs: 180,
    againWithinMs: 150,
  };
}

function basePlaces(layers: number): Places {
  const places = spread(LETTERS.map(key));
  for (const [id, code] of Object.entries(HOME_HOLDS)) {
    places[id] = {
      ...places[id],
      hold: key(code),
      holdBy: 'tap-inside',
      quietBeforeMs: 120,
      sameHandTaps: true,
    };
  }
  places.LT0 = { tap: { do: 'modifier', code: 'ShiftLeft', mode: 'latch' } };
  places.LT1 = thumb('Enter', 1, layers);
  places.LT2 = thumb('Space', 2, layers);
  places.RT0 = layers > 5 ? { tap: { do: 'layer', layer: layerId(5), mode: 'latch' } } : { tap: key('End') };
  places.RT1 = thumb('Backspace', 3, layers);
  places.RT2 = thumb('Delete', 4, layers);
  return places;
}

const chars = (text: string): Action[] => [...text].map((char) => ({ do: 'char', char }));
const codes = (list: readonly Code[]): Action[] => list.map(key);
const blanks = (count: number): Action[] => Array.from({ length: count }, () => ({ do: 'nothing' }));

const NAVIGATION: readonly Code[] = [
  ...(['Escape', 'Home', 'PageUp', 'PageDown', 'End', 'Insert'] as const),
  ...(['Home', 'PageDown', 'PageUp', 'End', 'Insert', 'Delete'] as const),
  ...(['Tab', 'MetaLeft', 'AltLeft', 'ControlLeft', 'ShiftLeft', 'CapsLock'] as const),
  ...(['ArrowLeft', 'ArrowDown', 'ArrowUp', 'ArrowRight', 'Enter', 'ContextMenu'] as const),
];
const FUNCTIONS: readonly Code[] = [
  ...(['F1', 'F2', 'F3', 'F4', 'F5', 'F6', 'F7', 'F8', 'F9', 'F10', 'F11', 'F12'] as const),
  ...(['PrintScreen', 'MetaLeft', 'AltLeft', 'ControlLeft', 'ShiftLeft', 'ScrollLock'] as const),
  ...(['Pause', 'ShiftRight', 'ControlRight', 'AltRight', 'MetaRight', 'NumLock'] as const),
];
const MEDIA: readonly Code[] = [
  ...(['AudioVolumeDown', 'AudioVolumeMute', 'AudioVolumeUp'] as const),
  ...(['MediaPlayPause', 'MediaStop', 'MediaTrackNext', 'MediaTrackPrevious'] as const),
  ...(['BrightnessUp', 'BrightnessDown', 'Eject', 'Power', 'Sleep'] as const),
];

/** What the layers above the base hold; further layers repeat the list. */
const CONTENTS: readonly (readonly Action[])[] = [
  chars('`1234567890-=!@#$%^&*()_+[]{}\\|/?<>,.'),
  chars('~!@#$%^&*()_+{}[]|\\;:\'"/?<>-='),
  codes(NAVIGATION),
  codes(FUNCTIONS),
  [...codes(MEDIA), { do: 'text', text: 'with kind regards' }, { do: 'board', label: 'Radio channel 2' }],
  [...blanks(12), ...chars('()[]{}<>"\'`'), { do: 'key', code: 'KeyZ', with: ['ControlLeft'] }],
  [...blanks(12), ...chars('789+-*456/=.123')],
];

/** Where a layer without a thumb key of its own is entered from: a key of layer 1, by latch and lock in turn. */
const ENTRIES: readonly KeyId[] = ['L30', 'L31', 'L32', 'L33', 'L34', 'L35', 'R35', 'R34', 'R33', 'R32'];

function entriesOnFirst(layers: number): Places {
  const places: Places = {};
  for (let layer = 6; layer < layers; layer++) {
    const id = ENTRIES[(layer - 6) % ENTRIES.length];
    const mode = layer % 2 === 0 ? 'lock' : 'latch';
    if (layer !== 7 && id !== undefined) places[id] = { tap: { do: 'layer', layer: layerId(layer), mode } };
  }
  return places;
}

/** A locked layer is left where it was entered: by the same key. */
function layerAt(index: number, layers: number): Layer {
  const id = layerId(index);
  if (index === 0) return { id, name: 'Base', places: basePlaces(layers) };
  const content = spread(CONTENTS[(index - 1) % CONTENTS.length] ?? []);
  const entries = entriesOnFirst(layers);
  const own = index === 1 ? entries : {};
  const back =
    index > 5 && index !== 7
      ? Object.fromEntries(
          Object.entries(entries).filter(([, binding]) => JSON.stringify(binding).includes(`"${id}"`)),
        )
      : {};
  const places = { ...content, ...own, ...back };
  const onWhile = index === 7 ? { onWhile: [layerId(1), layerId(2)] } : {};
  return { id, name: `Layer ${index}`, ...onWhile, places };
}

/**
 * The design on which speed is measured: 42 keys, 30 chords and as many layers as asked for (2 to 16). Home keys are
 * modifiers when held, thumb keys hold layers, others latch and lock; layer 7 is on while layers 1 and 2 are. Always the same.
 */
export function benchKeymap(layers = 8): Keymap {
  return {
    format: 'neutral-keymap',
    version: 1,
    name: `Bench, ${layers} layers`,
    board: benchBoard(),
    hosts: [{ system: 'linux', layout: 'us', variant: '' }],
    timing: { holdAfterMs: 200, quietBeforeMs: 0 },
    needs: { lists: ['ascii', 'editing', 'function-keys', 'modifiers', 'shortcuts'], own: [], waived: [] },
    layers: Array.from({ length: layers }, (_, index) => layerAt(index, layers)),
    chords: benchChords(),
  };
}
