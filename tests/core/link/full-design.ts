import { randomLcg } from 'd3-random';
import { readyBoard } from '../../../src/build/demos/ready-board.ts';
import { CODES, type Code, MODIFIERS } from '../../../src/core/keymap/codes.ts';
import type { Action, Binding, Chord, Keymap, Layer } from '../../../src/core/keymap/types.ts';

const LAYERS = 8;
const CHORDS = 30;
const SIGNS = '!"#$%&()*+,-./:;<=>?@[]^_`{|}~äöüßéèàçñ€£¥§°½≥≤≠→←↑↓„”‚’«»–—…·×÷±';
const MODES = ['while-held', 'latch', 'lock'] as const;

/**
 * A design with every one of 42 keys bound on each of eight layers and thirty chords, drawn at random from a seed in [0, 1): harder
 * to shorten than what a person makes, whose layers hold rows of letters and figures in order.
 */
export function fullDesign(seed: number): Keymap {
  const random = randomLcg(seed);
  const pick = <Item>(items: readonly Item[], otherwise: Item): Item =>
    items[Math.floor(random() * items.length)] ?? otherwise;
  const board = readyBoard('split-42', 'Forty-two keys, two halves');
  const codes = CODES.filter((code) => !MODIFIERS.some((modifier) => modifier === code));
  const layerId = (at: number) => (at === 0 ? 'base' : `layer${at}`);
  const code = (): Code => pick(codes, 'KeyA');
  const action = (): Action => {
    const kind = random();
    if (kind < 0.5) return { do: 'key', code: code() };
    if (kind < 0.6) return { do: 'key', code: code(), with: [pick(MODIFIERS, 'ShiftLeft')] };
    if (kind < 0.85) return { do: 'char', char: pick([...SIGNS], '!') };
    if (kind < 0.9)
      return { do: 'modifier', code: pick(MODIFIERS, 'ShiftLeft'), mode: pick(['latch', 'lock'], 'lock') };
    return {
      do: 'layer',
      layer: layerId(1 + Math.floor(random() * (LAYERS - 1))),
      mode: pick(MODES, 'lock'),
    };
  };
  const binding = (): Binding => {
    const kind = random();
    if (kind < 0.75) return { tap: action() };
    const held: Action = { do: 'key', code: pick(MODIFIERS, 'ShiftLeft') };
    if (kind < 0.95) return { tap: action(), hold: held };
    return {
      tap: action(),
      hold: held,
      holdAfterMs: 120 + Math.floor(random() * 200),
      holdBy: 'press-inside',
    };
  };
  const layers = Array.from({ length: LAYERS }, (_, at): Layer => {
    const places = Object.fromEntries(board.keys.map(({ id }) => [id, binding()]));
    return { id: layerId(at), name: at === 0 ? 'Base' : `Layer ${at}`, places };
  });
  const chords = Array.from({ length: CHORDS }, (_, at): Chord => {
    const keys = new Set<string>();
    const size = 2 + Math.floor(random() * 2);
    while (keys.size < size) keys.add(pick(board.keys, board.keys[0] ?? { id: '' }).id);
    const windowMs = 20 + Math.floor(random() * 60);
    return { id: `chord${at}`, keys: [...keys], windowMs, layers: [layerId(at % LAYERS)], action: action() };
  });
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Everything at once, 42 keys',
    notes: 'Every key on every layer, to see how long a link can grow.',
    board,
    hosts: [{ system: 'linux', layout: 'de', variant: '' }],
    needs: { lists: ['ascii', 'editing', 'shortcuts', 'cldr:de:letters'], own: ['≥', '→', '€'], waived: [] },
    layers,
    chords,
  };
}
