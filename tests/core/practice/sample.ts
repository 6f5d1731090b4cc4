import { expect } from 'vitest';
import { drawnPlaces } from '../../../src/build/demos/notation.ts';
import { readyBoard } from '../../../src/build/demos/ready-board.ts';
import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { type Need, parseNeed } from '../../../src/core/keymap/need.ts';
import type { Chord, Keymap } from '../../../src/core/keymap/types.ts';
import { LiveTyping, type Stretch } from '../../../src/core/practice/live-typing.ts';
import { type Way, Ways } from '../../../src/core/practice/ways.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';

const board = readyBoard('split-36', 'Thirty-six keys');

const LETTERS = `
  q w e r t                y u i o p
  a⇩ControlLeft s d f⇩ShiftLeft g   h j k l '
  z x c v b                n m , . ·
  Escape Space⇩@moves Tab  Backspace Enter⇩@signs Delete`;

const MOVES = `
  · · · · ·                Home PageDown PageUp End ·
  · · · · ·                ArrowLeft ArrowDown ArrowUp ArrowRight ·
  · · · · ·                · · · · ·
  · · ·                    · · ·`;

const SIGNS = `
  ^ { } $ ~                # [ ] % @
  ! ( ) = +                & - _ : ;
  · < > " ·                * | \\ ? ·
  · · ·                    · · ·`;

const CHORDS: readonly Chord[] = [
  {
    id: 'two',
    name: 'Two',
    keys: ['R12', 'R13', 'R14'],
    windowMs: 45,
    layers: ['letters'],
    action: { do: 'char', char: '2' },
  },
  {
    id: 'one',
    name: 'One',
    keys: ['L32', 'L33'],
    windowMs: 45,
    layers: ['letters'],
    action: { do: 'char', char: '1' },
  },
];

/** A small design: letters, two layers held by thumb keys, a chord of three and one of two. */
export const sample: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'Weir keeper, 36 keys',
  board,
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  needs: { lists: ['ascii', 'editing', 'shortcuts'], own: [], waived: [] },
  layers: [
    { id: 'letters', name: 'Letters', places: drawnPlaces(board, LETTERS) },
    { id: 'moves', name: 'Moves', places: drawnPlaces(board, MOVES) },
    { id: 'signs', name: 'Signs', places: drawnPlaces(board, SIGNS) },
  ],
  chords: CHORDS,
};

/** A need from how it is written. */
export function need(text: string): Need {
  const read = parseNeed(text);
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

/** How a need is meant to be typed on a design. */
export function way(text: string, keymap = sample): Way {
  const found = waysOf([text], keymap).of(text);
  if (found === null) throw new Error(`no route for ${text}`);
  return found;
}

/** The ways to some needs on a design. */
export function waysOf(texts: readonly string[], keymap = sample): Ways {
  return new Ways(keymap, usHost, findRoutes(keymap, usHost, texts.map(need)));
}

/** Reads "L42↓0 R22↓31.5": a key, down or up, ms. */
export function eventsIn(stream: string): KeyEvent[] {
  return stream.split(' ').map((word) => {
    const [, key, arrow, t] = /^(.+)([↓↑])(.+)$/.exec(word) ?? [];
    if (key === undefined || t === undefined) throw new Error(`cannot read ${word}`);
    return { t: Number(t), key, type: arrow === '↓' ? 'down' : 'up' };
  });
}

/** What happens when these presses are played. */
export function stretchOf(stream: string, keymap = sample): Stretch {
  const live = new LiveTyping(keymap, usHost);
  for (const event of eventsIn(stream)) expect(live.feed(event)).toBeUndefined();
  live.finish();
  return live.stretch();
}
