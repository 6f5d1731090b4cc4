import type { Binding, Keymap } from '../../core/keymap/types.ts';
import { drawnPlaces } from './notation.ts';
import { readyBoard } from './ready-board.ts';

const board = readyBoard('split-36', 'Thirty-six keys, two halves');

/**
 * A thumb key that enters a layer is pressed on purpose: whatever is pressed inside makes it a hold, at once. The Z is
 * the flaw that is left in: its hold came later, and without the protections of the home row.
 */
const lettersTiming = (word: string): Partial<Binding> => {
  if (word.includes('⇩@')) {
    return {
      holdAfterMs: 180,
      holdBy: 'press-inside',
      quietBeforeMs: 0,
      againWithinMs: 200,
      sameHandTaps: false,
    };
  }
  return word.startsWith('z')
    ? { holdAfterMs: 200, holdBy: 'time-only', quietBeforeMs: 0, sameHandTaps: false }
    : {};
};

const LETTERS = `
  q              w          e           r            t     y  u             i           o           p
  a⇩ControlLeft  s⇩AltLeft  d⇩MetaLeft  f⇩ShiftLeft  g     h  j⇩ShiftRight  k⇩MetaRight l⇩AltRight  '⇩ControlRight
  z⇩CapsLock     x          c           v            b     n  m             ,           .           /
  Escape         Space⇩@moves           Tab          Backspace⇩@numbers     Enter⇩@signs            Delete`;

const MOVES = `
  ·            ·        ·         PrintScreen ScrollLock   Home            PageDown        PageUp          End             Insert
  ControlLeft  AltLeft  MetaLeft  ShiftLeft   Pause        ArrowLeft       ArrowDown       ArrowUp         ArrowRight      ContextMenu
  ·            ·        ·         ·           ·            ControlLeft+KeyZ ControlLeft+KeyX ControlLeft+KeyC ControlLeft+KeyV ControlLeft+KeyF
  ·            ·                  ·                        ·               ·                               ·`;

const SIGNS = `
  ^  {  }  $  ~     #  [  ]  %  @
  !  (  )  =  +     &  -  _  :  ;
  ·  <  >  "  ·     *  |  \\  ·  ?
  ·  ·     ·        ·  ·     ·`;

const NUMBERS = `
  *  7  8  9  -     ·  ·           ·          ·         ·
  /  4  5  6  +     =  ShiftRight  MetaRight  AltRight  ControlRight
  ,  1  2  3  .     ·  ·           ·          ·         ·
  ·  ·     0        ·  ·           ·`;

const PANEL = `
  F12  F7  F8  F9  ·     ·                   BrightnessDown   BrightnessUp    ·               ·
  F11  F4  F5  F6  ·     AudioVolumeMute     AudioVolumeDown  AudioVolumeUp   MediaPlayPause  ·
  F10  F1  F2  F3  ·     MediaTrackPrevious  MediaTrackNext   MediaStop       ·               ·
  ·    ·       ·         ·                   ·                ·`;

const NOTES = `The keeper of a light station writes the log and the station's small programs on these 36 keys.

Letters lie as on QWERTY. Held home keys are modifiers, the same on both hands, and fast typing is kept from holding them: a letter right after another is a letter, and so is one that is followed by a key of its own hand. The middle thumb keys hold Moves (left) and Signs (right); both together open Panel, with the function keys, sound and brightness. The right inner thumb key holds Numbers for the left hand.

Findings left in it:
- need-missing [\`]: the backquote went lost when Signs was redrawn.
- chord-window-outside-hands [undo-word R12 R13 R14]: 45 ms is short for three keys.
- letter-hold-unprotected [letters L35]: Caps Lock came to Z later, without the protection of the home row.`;

/** The design that the page opens on. */
export const beaconLog: Keymap = {
  $schema: 'neutral-keymap.schema.json',
  format: 'neutral-keymap',
  version: 1,
  name: 'Beacon log, 36 keys',
  notes: NOTES,
  board,
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  timing: {
    holdAfterMs: 220,
    holdBy: 'tap-inside',
    quietBeforeMs: 120,
    againWithinMs: 150,
    sameHandTaps: true,
  },
  needs: {
    lists: ['ascii', 'editing', 'function-keys', 'media', 'modifiers', 'shortcuts'],
    own: [],
    waived: [],
  },
  layers: [
    { id: 'letters', name: 'Letters', places: drawnPlaces(board, LETTERS, lettersTiming) },
    { id: 'moves', name: 'Moves', places: drawnPlaces(board, MOVES) },
    { id: 'signs', name: 'Signs', places: drawnPlaces(board, SIGNS) },
    { id: 'numbers', name: 'Numbers', places: drawnPlaces(board, NUMBERS) },
    { id: 'panel', name: 'Panel', onWhile: ['moves', 'signs'], places: drawnPlaces(board, PANEL) },
  ],
  chords: [
    {
      id: 'undo-word',
      name: 'Delete the word',
      keys: ['R12', 'R13', 'R14'],
      windowMs: 45,
      layers: ['letters'],
      quietBeforeMs: 100,
      action: { do: 'key', code: 'Backspace', with: ['ControlLeft'] },
    },
    {
      id: 'save',
      name: 'Save the log',
      keys: ['L12', 'L13', 'L14'],
      windowMs: 65,
      layers: ['letters'],
      quietBeforeMs: 100,
      action: { do: 'key', code: 'KeyS', with: ['ControlLeft'] },
    },
  ],
};
