import { describe, expect, test } from 'vitest';
import { both, char, design, held, key, latch, latchCode, lock, nothing, ofBoard, text } from './design.ts';
import { playerOf, tracerOf } from './notation.ts';

const keymap = design({
  base: {
    A: key('A'),
    S: key('S'),
    D: key('D'),
    J: key('J'),
    1: latchCode('ShiftLeft'),
    2: latchCode('ShiftLeft'),
    3: latch('up'),
    4: latchCode('ControlLeft'),
    Q: latch('top'),
  },
  layers: { up: { A: key('1'), 3: latch('up') }, top: { S: key('2') } },
});
const play = playerOf(keymap);

describe('L1 a latch belongs to its layer or code', () => {
  test('L1 a press turns it on, a second press before it was used turns it off', () => {
    expect(play('1↓0 1↑10')).toBe('ShiftLeft↓0');
    expect(play('1↓0 1↑10 1↓20 1↑30 A↓40 A↑50')).toBe('ShiftLeft↓0 ShiftLeft↑20 A↓40 A↑50');
    expect(play('3↓0 3↑10 3↓20 3↑30 A↓40 A↑50')).toBe('A↓40 A↑50');
  });
  test('L1 by another key as well, while the first is still down; the releases of both do nothing', () => {
    expect(play('1↓0 2↓10 1↑20 2↑30 A↓40 A↑50')).toBe('ShiftLeft↓0 ShiftLeft↑10 A↓40 A↑50');
    expect(play('1↓0 2↓10 A↓15 1↑20 2↑30 A↑50')).toBe('ShiftLeft↓0 ShiftLeft↑10 A↓15 A↑50');
  });
  test('L1 a used latch whose key is down does not count: the press starts a new one', () => {
    // 1 is held and used by A; 2 starts a latch of its own, 1 goes off at its release, 2's is used by S.
    expect(play('1↓0 A↓10 A↑20 2↓30 1↑40 2↑50 S↓60 S↑70')).toBe(
      'ShiftLeft↓0 A↓10 A↑20 S↓60 S↑70 ShiftLeft↑70',
    );
    expect(tracerOf(keymap, 'latch-on', 'latch-off')('1↓0 A↓10 A↑20 2↓30 1↑40 2↑50 S↓60 S↑70')).toEqual([
      'L1 latch-on ShiftLeft@0',
      'L1 latch-on ShiftLeft@30',
      'L3 latch-off ShiftLeft@40',
      'L4 latch-off ShiftLeft@70',
    ]);
  });
  test('L1 a used latch whose action is still down does not count either', () => {
    expect(tracerOf(keymap, 'latch-on', 'latch-off')('1↓0 1↑10 A↓20 1↓30 1↑40 A↑50 S↓60 S↑70')).toEqual([
      'L1 latch-on ShiftLeft@0',
      'L1 latch-on ShiftLeft@30',
      'L4 latch-off ShiftLeft@50',
      'L4 latch-off ShiftLeft@70',
    ]);
    expect(play('1↓0 1↑10 A↓20 1↓30 1↑40 A↑50 S↓60 S↑70')).toBe(
      'ShiftLeft↓0 A↓20 A↑50 S↓60 S↑70 ShiftLeft↑70',
    );
  });
  test('L1 a third press turns it on again', () => {
    expect(play('1↓0 1↑1 1↓2 1↑3 1↓4 1↑5 A↓6 A↑7')).toBe(
      'ShiftLeft↓0 ShiftLeft↑2 ShiftLeft↓4 A↓6 A↑7 ShiftLeft↑7',
    );
  });
  test('L1 latches of different targets do not touch each other', () => {
    expect(play('1↓0 1↑1 4↓2 4↑3 A↓4 A↑5')).toBe(
      'ShiftLeft↓0 ControlLeft↓2 A↓4 A↑5 ControlLeft↑5 ShiftLeft↑5',
    );
  });
  test('L1 a key that turned another key’s latch off can start its own at its next press', () => {
    expect(play('1↓0 2↓10 2↑20 2↓30 2↑40 1↑50 A↓60 A↑70')).toBe(
      'ShiftLeft↓0 ShiftLeft↑10 ShiftLeft↓30 A↓60 A↑70 ShiftLeft↑70',
    );
  });
});

describe('L2 what types uses the latches, in four steps', () => {
  const kinds = design({
    base: {
      1: latchCode('ShiftLeft'),
      3: latch('up'),
      A: key('A'),
      S: char('b'),
      D: text('b'),
      F: char('ß'),
      G: key('AltLeft'),
      Q: nothing,
      W: ofBoard,
      E: held('other'),
      R: lock('other'),
    },
    layers: { up: { J: key('1') }, other: {} },
  });
  test.each([
    ['key', 'A', 'A↓2 A↑3'],
    ['char', 'S', 'B↓2 B↑3'],
    ['text', 'D', 'B↓2 B↑2'],
  ])('L2 %s types', (_, pressed, output) => {
    expect(playerOf(kinds)(`1↓0 1↑1 ${pressed}↓2 ${pressed}↑3`)).toBe(`ShiftLeft↓0 ${output} ShiftLeft↑3`);
  });
  test('L2 a character without a route types, too: it uses the latch though nothing is emitted', () => {
    expect(playerOf(kinds)('1↓0 1↑1 F↓2 F↑3')).toBe('ShiftLeft↓0 ShiftLeft↑3');
  });
  test('L2 an action types even if reference counting emits nothing', () => {
    const twice = playerOf(design({ base: { 1: latchCode('ShiftLeft'), A: key('A'), S: key('A') } }));
    expect(twice('A↓0 1↓1 1↑2 S↓3 S↑4 A↑5')).toBe('A↓0 ShiftLeft↓1 ShiftLeft↑4 A↑5');
  });
  test.each(['G', 'Q', 'W', 'E', 'R'])('L2 %s does not type: the latch stays', (pressed) => {
    const output = playerOf(kinds)(`1↓0 1↑1 ${pressed}↓2 ${pressed}↑3 A↓4 A↑5`);
    expect(output.replace('AltLeft↓2 AltLeft↑3 ', '')).toBe('ShiftLeft↓0 A↓4 A↑5 ShiftLeft↑5');
  });
  test('L2 step 1: a latch that an earlier action used goes off before the next is pressed', () => {
    expect(play('1↓0 1↑1 A↓2 S↓3 A↑4 S↑5')).toBe('ShiftLeft↓0 A↓2 ShiftLeft↑3 S↓3 A↑4 S↑5');
  });
  test('L2 step 1: not while the key of the latch is down', () => {
    expect(play('1↓0 A↓2 S↓3 A↑4 S↑5 1↑6')).toBe('ShiftLeft↓0 A↓2 S↓3 A↑4 S↑5 ShiftLeft↑6');
  });
  test('L2 step 1: a new latch of that code keeps it down through the hand-over', () => {
    expect(play('1↓0 1↑1 A↓2 1↓3 1↑4 S↓5 A↑6 S↑7')).toBe('ShiftLeft↓0 A↓2 S↓5 A↑6 S↑7 ShiftLeft↑7');
  });
  test('L2 step 3: a latch pressed while the action is down is not used by it', () => {
    expect(play('A↓0 1↓1 1↑2 A↑3 S↓4 S↑5')).toBe('A↓0 ShiftLeft↓1 A↑3 S↓4 S↑5 ShiftLeft↑5');
  });
  test('L2 step 4: a layer latch goes off once the action is pressed: the next press is on the layer below', () => {
    expect(play('3↓0 3↑1 A↓2 A↑3 A↓4 A↑5')).toBe('1↓2 1↑3 A↓4 A↑5');
    expect(play('3↓0 3↑1 A↓2 S↓3 S↑4 A↑5')).toBe('1↓2 S↓3 S↑4 1↑5');
    expect(tracerOf(keymap, 'layer-on', 'layer-off')('3↓0 3↑1 A↓2 A↑3')).toEqual([
      'L1 layer-on up@0',
      'L1 layer-off up@2',
    ]);
  });
  test('L2 step 4: a layer latch whose key is down stays', () => {
    expect(play('3↓0 A↓2 A↑3 A↓4 A↑5 3↑6 A↓7 A↑8')).toBe('1↓2 1↑3 1↓4 1↑5 A↓7 A↑8');
  });
  test('L2 an open key uses the latch when its tap is pressed, and is looked up on the latched layer', () => {
    const open = design({
      base: { 3: latch('up'), F: both(key('F'), key('AltLeft')) },
      layers: { up: { F: both(key('1'), key('AltRight')) } },
    });
    expect(playerOf(open)('3↓0 3↑1 F↓2 F↑50 F↓60 F↑70')).toBe('1↓50 1↑50 F↓70 F↑70');
    expect(playerOf(open)('3↓0 3↑1 F↓2 F↑300 F↓310 F↑320')).toBe('AltRight↓202 AltRight↑300 1↓320 1↑320');
  });
});

describe('L3 at the release of the latch key', () => {
  test('L3 an unused latch stays on', () => {
    expect(play('1↓0 1↑500 A↓600 A↑610')).toBe('ShiftLeft↓0 A↓600 A↑610 ShiftLeft↑610');
  });
  test('L3 a used one goes off, though the action that used it is still down', () => {
    expect(play('1↓0 A↓10 1↑20 A↑30')).toBe('ShiftLeft↓0 A↓10 ShiftLeft↑20 A↑30');
  });
  test('L3 a used layer latch goes off', () => {
    expect(play('3↓0 A↓10 3↑20 A↑30 A↓40 A↑50')).toBe('1↓10 1↑30 A↓40 A↑50');
  });
  test('L3 only at the release of the press that turned it on, not at a later one of that key', () => {
    const twice = design({
      base: { A: key('A'), 1: latchCode('ShiftLeft'), 3: held('up') },
      layers: { up: { 1: nothing } },
    });
    expect(playerOf(twice)('1↓0 1↑1 A↓2 3↓3 1↓4 1↑5 3↑6 A↑7')).toBe('ShiftLeft↓0 A↓2 A↑7 ShiftLeft↑7');
  });
});

describe('L4 a modifier latch that was used after its key’s release', () => {
  test('L4 goes off right after the release of the action that used it', () => {
    expect(play('1↓0 1↑1 A↓2 A↑9')).toBe('ShiftLeft↓0 A↓2 A↑9 ShiftLeft↑9');
  });
  test('L4 not at the release of another action', () => {
    expect(play('S↓0 1↓1 1↑2 A↓3 S↑4 A↑5')).toBe('S↓0 ShiftLeft↓1 A↓3 S↑4 A↑5 ShiftLeft↑5');
  });
  test('L4 an action that used it while its key was down does not take it along', () => {
    expect(play('1↓0 A↓1 A↑2 S↓3 S↑4 1↑5')).toBe('ShiftLeft↓0 A↓1 A↑2 S↓3 S↑4 ShiftLeft↑5');
  });
  test('L4 unless step 1 came first: then it went off at the next typing press', () => {
    expect(play('1↓0 1↑1 A↓2 J↓3 J↑4 A↑5')).toBe('ShiftLeft↓0 A↓2 ShiftLeft↑3 J↓3 J↑4 A↑5');
  });
  test('L4 a text types all of itself under the latch and lets it go with its key', () => {
    const written = playerOf(design({ base: { 1: latchCode('ShiftLeft'), D: text('ab') } }));
    expect(written('1↓0 1↑1 D↓2 D↑9')).toBe('ShiftLeft↓0 A↓2 A↑2 B↓2 B↑2 ShiftLeft↑9');
  });
});

describe('L5 several that go off together', () => {
  test('L5 in L4: the last to come on goes first', () => {
    expect(play('4↓0 4↑1 1↓2 1↑3 A↓4 A↑5')).toBe(
      'ControlLeft↓0 ShiftLeft↓2 A↓4 A↑5 ShiftLeft↑5 ControlLeft↑5',
    );
    expect(play('1↓0 1↑1 4↓2 4↑3 A↓4 A↑5')).toBe(
      'ShiftLeft↓0 ControlLeft↓2 A↓4 A↑5 ControlLeft↑5 ShiftLeft↑5',
    );
  });
  test('L5 in step 1 of L2 as well', () => {
    expect(play('4↓0 4↑1 1↓2 1↑3 A↓4 S↓5 S↑6 A↑7')).toBe(
      'ControlLeft↓0 ShiftLeft↓2 A↓4 ShiftLeft↑5 ControlLeft↑5 S↓5 S↑6 A↑7',
    );
  });
  test('L5 in step 4: layers, the last to come on first', () => {
    expect(tracerOf(keymap, 'layer-off')('3↓0 3↑1 Q↓2 Q↑3 S↓4 S↑5')).toEqual([
      'L1 layer-off top@4',
      'L1 layer-off up@4',
    ]);
    expect(tracerOf(keymap, 'layer-off')('Q↓0 Q↑1 3↓2 3↑3 S↓4 S↑5')).toEqual([
      'L1 layer-off up@4',
      'L1 layer-off top@4',
    ]);
  });
  test('L5 layer, modifier, nothing and board actions use no latch', () => {
    expect(play('1↓0 1↑1 3↓2 3↑3 A↓4 A↑5')).toBe('ShiftLeft↓0 1↓4 1↑5 ShiftLeft↑5');
  });
});
