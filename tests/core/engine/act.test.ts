import { describe, expect, test } from 'vitest';
import {
  both,
  char,
  chord,
  design,
  held,
  key,
  latch,
  latchCode,
  lock,
  lockCode,
  nothing,
  ofBoard,
  text,
} from './design.ts';
import { playerOf, tracerOf } from './notation.ts';

describe('A1 key', () => {
  test('A1 modifiers in order, then the code; the other way round on release', () => {
    const play = playerOf(design({ base: { A: key('Delete', 'ControlLeft', 'AltLeft') } }));
    expect(play('A↓0 A↑9')).toBe('ControlLeft↓0 AltLeft↓0 Delete↓0 Delete↑9 AltLeft↑9 ControlLeft↑9');
  });
  test('A1 a modifier of a modifier', () => {
    const play = playerOf(design({ base: { A: key('AltRight', 'ShiftLeft') } }));
    expect(play('A↓0 A↑9')).toBe('ShiftLeft↓0 AltRight↓0 AltRight↑9 ShiftLeft↑9');
  });
});

describe('A2 char', () => {
  const play = playerOf(
    design({ base: { A: char('a'), S: char('€'), D: char('É'), F: char('ß'), G: char('ñ') } }),
  );
  test('A2 one stroke is like key, by the first route', () => {
    expect(play('A↓0 A↑9')).toBe('A↓0 A↑9');
    expect(play('S↓0 S↑9')).toBe('AltRight↓0 ShiftLeft↓0 E↓0 E↑9 ShiftLeft↑9 AltRight↑9');
  });
  test('A2 several strokes: all but the last on the press, the last is held', () => {
    expect(play('D↓0 D↑9')).toBe('Quote↓0 Quote↑0 ShiftLeft↓0 E↓0 E↑9 ShiftLeft↑9');
    expect(play('G↓0 G↑9')).toBe('ShiftLeft↓0 Backquote↓0 Backquote↑0 ShiftLeft↑0 N↓0 N↑9');
  });
  test('A2 no route: nothing is emitted and the trace says so', () => {
    expect(play('F↓0 F↑9')).toBe('');
    expect(tracerOf(design({ base: { F: char('ß') } }))('F↓0 F↑9')).toEqual([
      'S9 tap F@0',
      'A2 no-route ß@0',
    ]);
  });
});

describe('A3 text', () => {
  test('A3 each character pressed and released on the press, nothing on release', () => {
    const play = playerOf(design({ base: { A: text('aAé') } }));
    expect(play('A↓5 A↑90')).toBe('A↓5 A↑5 ShiftLeft↓5 A↓5 A↑5 ShiftLeft↑5 Quote↓5 Quote↑5 E↓5 E↑5');
  });
  test('A3 a character without a route is left out, the others are typed', () => {
    const keymap = design({ base: { A: text('aßb') } });
    expect(playerOf(keymap)('A↓5 A↑90')).toBe('A↓5 A↑5 B↓5 B↑5');
    expect(tracerOf(keymap, 'no-route')('A↓5 A↑90')).toEqual(['A2 no-route ß@5']);
  });
  test('A3 a character is a grapheme cluster: a letter and its accent, composed or not, are one', () => {
    expect(playerOf(design({ base: { A: text('e\u0301a') } }))('A↓5 A↑90')).toBe(
      'Quote↓5 Quote↑5 E↓5 E↑5 A↓5 A↑5',
    );
  });
});

describe('A4 layer while-held', () => {
  const keymap = design({
    base: { A: key('A'), 1: held('low'), 2: held('high'), 3: held('low') },
    layers: { low: { A: key('1') }, high: { A: key('2') }, both: { A: key('3') }, chain: { S: key('4') } },
    onWhile: { both: ['low', 'high'], chain: ['both', 'low'] },
  });
  const play = playerOf(keymap);
  test('A4 on at press, off at release', () => {
    expect(play('1↓0 A↓1 A↑2 1↑3 A↓4 A↑5')).toBe('1↓1 1↑2 A↓4 A↑5');
    expect(tracerOf(keymap, 'layer-on', 'layer-off')('1↓0 1↑3')).toEqual([
      'A4 layer-on low@0',
      'A4 layer-off low@3',
    ]);
  });
  test('A4 two keys hold one layer: on until both are up', () => {
    expect(play('1↓0 3↓1 1↑2 A↓3 A↑4 3↑5 A↓6 A↑7')).toBe('1↓3 1↑4 A↓6 A↑7');
  });
  test('A4 onWhile: on while all named layers are on', () => {
    expect(play('1↓0 2↓1 A↓2 A↑3 1↑4 A↓5 A↑6 2↑7')).toBe('3↓2 3↑3 2↓5 2↑6');
  });
  test('A4 onWhile may name a layer that is itself on by onWhile', () => {
    expect(play('1↓0 2↓1 S↓2 S↑3 1↑4 S↓5 S↑6 2↑7')).toBe('4↓2 4↑3');
    expect(tracerOf(keymap, 'layer-on', 'layer-off')('1↓0 2↓1 2↑2 1↑3')).toEqual([
      'A4 layer-on low@0',
      'A4 layer-on high@1',
      'A4 layer-on both@1',
      'A4 layer-on chain@1',
      'A4 layer-off high@2',
      'A4 layer-off both@2',
      'A4 layer-off chain@2',
      'A4 layer-off low@3',
    ]);
  });
  test('A4 a layer with onWhile may be held besides', () => {
    const besides = design({
      base: { A: key('A'), 1: held('low'), 2: held('high'), 3: held('both') },
      layers: { low: {}, high: {}, both: { A: key('3') } },
      onWhile: { both: ['low', 'high'] },
    });
    expect(playerOf(besides)('1↓0 2↓1 3↓2 1↑3 A↓4 A↑5 2↑6 3↑7 A↓8 A↑9')).toBe('3↓4 3↑5 A↓8 A↑9');
  });
  test('A4 onWhile looks at layers that are on in whatever way', () => {
    const ways = design({
      base: { A: key('A'), 1: latch('low'), 2: lock('high') },
      layers: { low: {}, high: {}, both: { A: key('3') } },
      onWhile: { both: ['low', 'high'] },
    });
    expect(playerOf(ways)('2↓0 2↑1 1↓2 1↑3 A↓4 A↑5 A↓6 A↑7')).toBe('3↓4 3↑5 A↓6 A↑7');
  });
});

describe('A5 lock', () => {
  const keymap = design({
    base: { A: key('A'), 1: lock('up'), 2: lockCode('ShiftLeft'), 3: lockCode('ShiftLeft'), 4: held('up') },
    layers: { up: { A: key('1') } },
  });
  const play = playerOf(keymap);
  test('A5 each press toggles, a release does nothing', () => {
    expect(play('1↓0 1↑1 A↓2 A↑3 1↓4 A↓5 A↑6 1↑7')).toBe('1↓2 1↑3 A↓5 A↑6');
    expect(tracerOf(keymap, 'lock-on', 'lock-off')('1↓0 1↑1 1↓4 1↑7')).toEqual([
      'A5 lock-on up@0',
      'A5 lock-off up@4',
    ]);
  });
  test('A5 a locked modifier counts as one press of its code', () => {
    expect(play('2↓0 2↑1 A↓2 A↑3 2↓4 2↑5')).toBe('ShiftLeft↓0 A↓2 A↑3 ShiftLeft↑4');
  });
  test('A5 the lock belongs to the code, not to the key', () => {
    expect(play('2↓0 2↑1 3↓2 3↑3')).toBe('ShiftLeft↓0 ShiftLeft↑2');
  });
  test('A5 a locked layer that is held besides stays on until neither', () => {
    expect(play('1↓0 1↑1 4↓2 1↓3 1↑4 A↓5 A↑6 4↑7 A↓8 A↑9')).toBe('1↓5 1↑6 A↓8 A↑9');
    expect(play('1↓0 1↑1 4↓2 4↑3 A↓5 A↑6')).toBe('1↓5 1↑6');
  });
  test('A5 a lock does not use a latch and no typing takes it off', () => {
    expect(play('2↓0 2↑1 A↓2 A↑3 A↓4 A↑5')).toBe('ShiftLeft↓0 A↓2 A↑3 A↓4 A↑5');
  });
});

test('A6 nothing and board emit nothing, though their key is bound', () => {
  const keymap = design({ base: { A: nothing, S: ofBoard } });
  expect(playerOf(keymap)('A↓0 A↑1 S↓2 S↑3')).toBe('');
  expect(tracerOf(keymap)('A↓0 A↑1 S↓2 S↑3')).toEqual(['S9 tap A@0', 'S9 tap S@2']);
});

describe('A7 reference counting', () => {
  test('A7 pressed at the first, released at the last', () => {
    const play = playerOf(design({ base: { A: key('A'), S: key('A') } }));
    expect(play('A↓0 S↓1 A↑2 S↑3')).toBe('A↓0 A↑3');
    expect(play('A↓0 S↓1 S↑2 A↑3')).toBe('A↓0 A↑3');
  });
  test('A7 modifiers around codes count, too', () => {
    const play = playerOf(
      design({ base: { 1: key('ShiftLeft'), A: key('1', 'ShiftLeft'), S: key('2', 'ShiftLeft') } }),
    );
    expect(play('A↓0 S↓1 A↑2 S↑3')).toBe('ShiftLeft↓0 1↓0 2↓1 1↑2 2↑3 ShiftLeft↑3');
    expect(play('1↓0 A↓1 1↑2 A↑3')).toBe('ShiftLeft↓0 1↓1 1↑3 ShiftLeft↑3');
  });
  test('A7 a locked and a latched modifier are one press each', () => {
    const play = playerOf(
      design({ base: { 1: lockCode('ShiftLeft'), 2: latchCode('ShiftLeft'), A: key('A') } }),
    );
    expect(play('1↓0 1↑1 2↓2 2↑3 A↓4 A↑5 1↓6 1↑7')).toBe('ShiftLeft↓0 A↓4 A↑5 ShiftLeft↑6');
    expect(play('2↓0 2↑1 1↓2 1↑3 A↓4 A↑5')).toBe('ShiftLeft↓0 A↓4 A↑5');
  });
  test('A7 a stroke in passing of a code that is down emits nothing', () => {
    const play = playerOf(design({ base: { A: key('A'), S: text('ab') } }));
    expect(play('A↓0 S↓1 S↑2 A↑3')).toBe('A↓0 B↓1 B↑1 A↑3');
  });
  test('A7 a code that names itself as modifier is counted twice and released once', () => {
    expect(playerOf(design({ base: { A: key('ShiftLeft', 'ShiftLeft') } }))('A↓0 A↑9')).toBe(
      'ShiftLeft↓0 ShiftLeft↑9',
    );
  });
  test('A7 a chord’s action and a key’s share the count', () => {
    const keymap = design({ base: { J: key('A') }, chords: [chord('DF', 45, key('A'))] });
    expect(playerOf(keymap)('J↓0 D↓10 F↓11 J↑20 D↑30 F↑31')).toBe('A↓0 A↑30');
  });
});

test('actions act alike as tap, as hold and in a chord', () => {
  const keymap = design({
    base: { A: both(text('a'), text('b'), { holdAfterMs: 50 }), S: { hold: char('é') } },
    chords: [chord('DF', 45, char('é'))],
  });
  const play = playerOf(keymap);
  expect(play('A↓0 A↑50')).toBe('A↓50 A↑50');
  expect(play('A↓0 A↑60')).toBe('B↓50 B↑50');
  expect(play('S↓0 S↑9')).toBe('Quote↓0 Quote↑0 E↓0 E↑9');
  expect(play('D↓0 F↓0 F↑9 D↑10')).toBe('Quote↓0 Quote↑0 E↓0 E↑9');
});
