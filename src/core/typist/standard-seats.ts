import type { Seat } from './pair-class.ts';

/**
 * Who presses which key of a standard keyboard in ten-finger typing, by W3C code: common practice, no source. One string
 * a row, its keys from left to right; a digit before each key is the finger, 4 little to 1 index, columns counted
 * outwards from the finger's home column.
 */
const LEFT: readonly (readonly [row: number, codes: string, fingers: string])[] = [
  [-2, 'Digit1 Digit2 Digit3 Digit4 Digit5', '43211'],
  [-1, 'KeyQ KeyW KeyE KeyR KeyT', '43211'],
  [0, 'KeyA KeyS KeyD KeyF KeyG', '43211'],
  [1, 'KeyZ KeyX KeyC KeyV KeyB', '43211'],
];
const RIGHT: typeof LEFT = [
  [-2, 'Digit6 Digit7 Digit8 Digit9 Digit0 Minus', '112344'],
  [-1, 'KeyY KeyU KeyI KeyO KeyP BracketLeft', '112344'],
  [0, 'KeyH KeyJ KeyK KeyL Semicolon Quote', '112344'],
  [1, 'KeyN KeyM Comma Period Slash', '11234'],
];

const THUMB: Seat = { left: false, finger: 0, row: 0, column: 0, home: false };

/** The seats of a standard keyboard's typing keys by W3C code. Keys that are not in it break a run of presses. */
export const STANDARD_SEATS: ReadonlyMap<string, Seat> = new Map([
  ...LEFT.flatMap((row) => seatsOfRow(true, row)),
  ...RIGHT.flatMap((row) => seatsOfRow(false, row)),
  ['Space', THUMB],
]);

function seatsOfRow(left: boolean, [row, codes, fingers]: (typeof LEFT)[number]): [string, Seat][] {
  const all = codes.split(' ');
  return all.map((code, at): [string, Seat] => {
    const finger = Number(fingers[at]);
    const isInner = left ? at === 4 : at === 0;
    const isOuter = !left && at === 5;
    const column = isInner ? -1 : isOuter ? 1 : 0;
    return [code, { left, finger, row, column, home: row === 0 && column === 0 }];
  });
}
