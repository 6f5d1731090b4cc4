import { describe, expect, test } from 'vitest';
import { both, chord, design, held, key, lock } from './design.ts';
import { playerOf, tracerOf } from './notation.ts';

const letters = { A: key('A'), S: key('S'), D: key('D'), F: key('F'), J: key('J'), K: key('K') };

describe('G1 the first key of a chord', () => {
  test('G1 a key of no chord passes at once, a key of one waits', () => {
    const keymap = design({ base: letters, chords: [chord('DF', 45, key('Tab'))] });
    expect(playerOf(keymap)('J↓0 J↑5 D↓10 D↑30')).toBe('J↓0 J↑5 D↓30 D↑30');
    expect(tracerOf(keymap, 'waiting')('J↓0 J↑5 D↓10 D↑30')).toEqual(['G1 waiting D@10']);
  });

  test('G1 chords do not fall through: only the highest layer that is on counts', () => {
    const play = playerOf(
      design({
        base: { ...letters, 1: held('up') },
        layers: { up: { D: key('1'), F: key('2') } },
        chords: [chord('DF', 45, key('Tab'), { layers: ['base'] })],
      }),
    );
    expect(play('D↓0 F↓9 D↑50 F↑60')).toBe('Tab↓9 Tab↑50');
    expect(play('1↓0 D↓10 F↓19 D↑50 F↑60 1↑70')).toBe('1↓10 2↓19 1↑50 2↑60');
  });

  test('G1 a chord without layers is live on all of them, one with layers only there', () => {
    const play = playerOf(
      design({
        base: { ...letters, 1: held('up') },
        layers: { up: {} },
        chords: [chord('DF', 45, key('Tab')), chord('JK', 45, key('Enter'), { layers: ['up'] })],
      }),
    );
    expect(play('1↓0 D↓10 F↓19 D↑50 F↑60 J↓70 K↓71 J↑80 K↑81 1↑90')).toBe('Tab↓19 Tab↑50 Enter↓71 Enter↑80');
    expect(play('J↓70 K↓71 J↑80 K↑81')).toBe('J↓70 K↓71 J↑80 K↑81');
  });

  test('G1 a layer of an open key is not on yet', () => {
    const play = playerOf(
      design({
        base: { ...letters, 1: both(key('Space'), held('up')) },
        layers: { up: { D: key('1'), F: key('2') } },
        chords: [chord('DF', 45, key('Tab'), { layers: ['base'] })],
      }),
    );
    // D waits by the base layer's chord; 1 becomes a hold at 200 all the same and the chord's action comes after it.
    expect(play('1↓0 D↓150 F↓160 D↑300 F↑301 1↑310')).toBe('Tab↓200 Tab↑300');
  });

  describe('G1 quiet before', () => {
    const play = playerOf(
      design({ base: letters, chords: [chord('DF', 45, key('Tab'), { quietBeforeMs: 150 })] }),
    );
    test('G1 no press before: the chord is possible', () => {
      expect(play('D↓0 F↓10 D↑50 F↑60')).toBe('Tab↓10 Tab↑50');
    });
    test('G1 exactly the quiet time after the last down it is possible', () => {
      expect(play('J↓0 J↑20 D↓150 F↓160 D↑190 F↑200')).toBe('J↓0 J↑20 Tab↓160 Tab↑190');
    });
    test('G1 a quarter of a ms less and it is not', () => {
      expect(play('J↓0 J↑20 D↓149.75 F↓160 D↑190 F↑200')).toBe('J↓0 J↑20 D↓149.75 F↓160 D↑190 F↑200');
    });
    test('G1 a down of the key itself counts as well, and releases do not', () => {
      expect(play('D↓0 D↑20 D↓100 F↓110 D↑130 F↑140')).toBe('D↓20 D↑20 D↓100 F↓110 D↑130 F↑140');
      expect(play('J↓0 J↑149 D↓150 F↓160 D↑190 F↑200')).toBe('J↓0 J↑149 Tab↓160 Tab↑190');
    });
    test('G1 it is looked at for the first key only', () => {
      expect(play('D↓0 F↓1 F↑40 D↑50')).toBe('Tab↓1 Tab↑40');
    });
  });
});

describe('G2 further keys', () => {
  const play = playerOf(design({ base: letters, chords: [chord('DF', 45, key('Tab'))] }));
  test('G2 within the window includes the window itself', () => {
    expect(play('D↓0 F↓45 D↑80 F↑90')).toBe('Tab↓45 Tab↑80');
  });
  test('G2 a quarter of a ms later the first key is on its own', () => {
    expect(play('D↓0 F↓45.25 D↑80 F↑130')).toBe('D↓45 F↓90.25 D↑90.25 F↑130');
  });
  test('G2 the window counts from the first key, not from the one before', () => {
    const three = playerOf(design({ base: letters, chords: [chord('SDF', 45, key('Tab'))] }));
    expect(three('S↓0 D↓30 F↓45 S↑80 D↑81 F↑82')).toBe('Tab↓45 Tab↑80');
    expect(three('S↓0 D↓30 F↓60 S↑80 D↑81 F↑82')).toBe('S↓45 D↓45 F↓82 S↑82 D↑82 F↑82');
  });
  test('G2 a key that fits no possible chord flushes and starts afresh', () => {
    expect(play('D↓0 J↓20 J↑40 D↑50')).toBe('D↓20 J↓20 J↑40 D↑50');
    const two = design({ base: letters, chords: [chord('AS', 45, key('1')), chord('DF', 45, key('2'))] });
    expect(playerOf(two)('A↓0 D↓20 F↓30 D↑50 F↑51 A↑60')).toBe('A↓20 2↓30 2↑50 A↑60');
  });
  test('G2 a key whose chord closed its window is afresh though another is possible', () => {
    const two = design({ base: letters, chords: [chord('DF', 20, key('1')), chord('DJ', 60, key('2'))] });
    expect(playerOf(two)('D↓0 F↓30 F↑100 D↑110')).toBe('D↓30 F↓50 F↑100 D↑110');
    expect(playerOf(two)('D↓0 J↓60 J↑100 D↑110')).toBe('2↓60 2↑100');
  });
  test('G2 a flush by the next key works a layer on before that key looks for chords', () => {
    const keymap = design({
      base: { ...letters, A: lock('up') },
      layers: { up: { D: key('1'), F: key('2') } },
      chords: [chord('AS', 45, key('Tab')), chord('DF', 45, key('Enter'), { layers: ['up'] })],
    });
    expect(playerOf(keymap)('A↓0 D↓10 F↓20 A↑30 D↑40 F↑50')).toBe('Enter↓20 Enter↑40');
  });
  test('G2 a layer that changes while keys wait does not matter', () => {
    const keymap = design({
      base: { ...letters, 1: held('up') },
      layers: { up: {} },
      chords: [
        chord('DF', 45, key('Tab'), { layers: ['base'] }),
        chord('JK', 45, key('Enter'), { layers: ['up'] }),
      ],
    });
    expect(playerOf(keymap)('1↓0 J↓10 1↑20 K↓30 J↑60 K↑61')).toBe('Enter↓30 Enter↑60');
  });
});

describe('G3 whole chords', () => {
  const nested = [chord('DF', 30, key('1')), chord('SDF', 50, key('2'))];
  test('G3 whole with no larger one: it fires at once', () => {
    expect(playerOf(design({ base: letters, chords: nested }))('D↓0 F↓10 S↓20 D↑60 F↑61 S↑62')).toBe(
      '2↓20 2↑60',
    );
  });
  test('G3 whole with a larger one: it waits for the window of the larger', () => {
    const keymap = design({ base: letters, chords: nested });
    expect(playerOf(keymap)('D↓0 F↓10 D↑90 F↑91')).toBe('1↓50 1↑90');
    expect(tracerOf(keymap, 'chord')('D↓0 F↓10 D↑90 F↑91')).toEqual(['G6 chord df@50']);
  });
  test('G3 the larger one comes in its own window, after that of the smaller', () => {
    expect(playerOf(design({ base: letters, chords: nested }))('D↓0 F↓30 S↓50 D↑60 F↑61 S↑62')).toBe(
      '2↓50 2↑60',
    );
  });
  test('G3 of two with the same keys the first in the document fires', () => {
    const twins = [chord('FD', 45, key('1')), chord('DF', 45, key('2'))];
    expect(playerOf(design({ base: letters, chords: twins }))('D↓0 F↓10 D↑60 F↑61')).toBe('1↓10 1↑60');
    expect(playerOf(design({ base: letters, chords: twins.toReversed() }))('D↓0 F↓10 D↑60 F↑61')).toBe(
      '2↓10 2↑60',
    );
  });
  test('G3 the timer is the longest window of the larger ones that are still possible', () => {
    const chords = [chord('DF', 20, key('1')), chord('DJ', 80, key('2'))];
    expect(playerOf(design({ base: letters, chords }))('D↓0 D↑200')).toBe('D↓80 D↑200');
  });
  test('G3 in whatever order the larger ones stand in the document', () => {
    const chords = [chord('DJ', 80, key('2')), chord('DF', 20, key('1'))];
    expect(playerOf(design({ base: letters, chords }))('D↓0 D↑200')).toBe('D↓80 D↑200');
  });
  test('G3 a window of 0 ms takes keys of the same instant only', () => {
    const play = playerOf(design({ base: letters, chords: [chord('DF', 0, key('1'))] }));
    expect(play('D↓5 F↓5 D↑9 F↑9')).toBe('1↓5 1↑9');
    expect(play('D↓5 F↓5.25 D↑9 F↑9')).toBe('D↓5 F↓5.25 D↑9 F↑9');
  });
});

describe('G4 a waiting key comes up', () => {
  test('G4 what waits is flushed, then the up follows', () => {
    const keymap = design({ base: letters, chords: [chord('SDF', 50, key('2'))] });
    expect(playerOf(keymap)('D↓0 F↓10 D↑20 F↑30')).toBe('D↓20 F↓20 D↑20 F↑30');
  });
  test('G4 a smaller chord that is whole fires and is released by this very up', () => {
    const keymap = design({ base: letters, chords: [chord('DF', 30, key('1')), chord('SDF', 50, key('2'))] });
    expect(playerOf(keymap)('D↓0 F↓10 D↑20 F↑30')).toBe('1↓20 1↑20');
    expect(tracerOf(keymap, 'chord')('D↓0 F↓10 D↑20 F↑30')).toEqual(['G4 chord df@20']);
  });
  test('G4 exactly at the end of the window the up comes before the timer', () => {
    const keymap = design({ base: letters, chords: [chord('DF', 30, key('1')), chord('SDF', 50, key('2'))] });
    expect(tracerOf(keymap, 'chord')('D↓0 F↓10 D↑50 F↑60')).toEqual(['G4 chord df@50']);
  });
});

describe('G5 the release of a firing', () => {
  const play = playerOf(
    design({ base: letters, chords: [chord('SDF', 50, key('2')), chord('JK', 50, key('1'))] }),
  );
  test('G5 the first of its keys releases it, the others do nothing', () => {
    expect(play('S↓0 D↓1 F↓2 D↑40 S↑90 F↑91')).toBe('2↓2 2↑40');
  });
  test('G5 an up that comes while something waits waits behind it', () => {
    expect(play('A↓0 J↓10 A↑20 J↑60')).toBe('A↓0 J↓60 A↑60 J↑60');
    expect(play('A↓0 J↓10 A↑20 J↑90')).toBe('A↓0 J↓60 A↑60 J↑90');
  });
  test('G5 the up of a firing waits as well', () => {
    expect(play('S↓0 D↓1 F↓2 J↓30 S↑40 D↑41 F↑42 J↑100')).toBe('2↓2 J↓80 2↑80 J↑100');
  });
  test('G5 an up that waits leaves what is possible as it was', () => {
    expect(play('A↓0 J↓10 A↑20 K↓30 J↑50 K↑60')).toBe('A↓0 1↓30 A↑30 1↑50');
  });
});

test('G6 the timer flushes: at the window, not before', () => {
  const play = playerOf(design({ base: letters, chords: [chord('DF', 45, key('Tab'))] }));
  expect(play('D↓0 J↓45 D↑80 J↑90')).toBe('D↓45 J↓45 D↑80 J↑90');
  expect(play('D↓0 D↑45.25')).toBe('D↓45 D↑45.25');
});

describe('G7 flush', () => {
  test('G7 without a whole chord all pass on, in order, with their own physical times', () => {
    const keymap = design({
      base: { ...letters, D: both(key('D'), key('ShiftLeft'), { holdAfterMs: 60 }) },
      chords: [chord('DFJ', 50, key('Tab'))],
    });
    // D went down at 0: it is a hold at 60 though it was passed on at 50 only.
    expect(playerOf(keymap)('D↓0 F↓20 D↑70 F↑80')).toBe('ShiftLeft↓60 F↓60 ShiftLeft↑70 F↑80');
    expect(playerOf(keymap)('D↓0 F↓20 D↑60 F↑80')).toBe('D↓60 F↓60 D↑60 F↑80');
  });
  test('G7 stage 2 has finished with the batch before the present event goes on', () => {
    const keymap = design({
      base: { ...letters, S: lock('up') },
      layers: { up: { J: key('1') } },
      chords: [chord('SD', 45, key('Tab'))],
    });
    expect(playerOf(keymap)('S↓0 J↓5 J↑9 S↑10')).toBe('1↓5 1↑9');
  });
});

describe('G8 firings', () => {
  test('G8 the firing has the time of its first key, and waiting ups come after it', () => {
    const keymap = design({ base: letters, chords: [chord('JK', 50, key('1'))] });
    expect(playerOf(keymap)('A↓0 J↓10 A↑20 K↓30 J↑50 K↑60')).toBe('A↓0 1↓30 A↑30 1↑50');
  });
  test('G8 each key belongs to its firing until its own up, so a new press of one key is a press of its own', () => {
    const keymap = design({ base: letters, chords: [chord('DF', 45, key('Tab'))] });
    expect(playerOf(keymap)('D↓0 F↓9 D↑50 D↓100 D↑200 F↑300')).toBe('Tab↓9 Tab↑50 D↓145 D↑200');
  });
  test('G8 the same chord fires again and again', () => {
    const keymap = design({ base: letters, chords: [chord('DF', 45, key('Tab'))] });
    expect(playerOf(keymap)('D↓0 F↓9 D↑50 F↑52 F↓60 D↓61 D↑99 F↑99')).toBe('Tab↓9 Tab↑50 Tab↓61 Tab↑99');
  });
  test('G8 another chord fires while an old key is still to come up', () => {
    const keymap = design({
      base: letters,
      chords: [chord('DF', 45, key('Tab')), chord('DJ', 45, key('Enter'))],
    });
    expect(playerOf(keymap)('D↓0 F↓9 D↑50 D↓60 J↓61 F↑70 J↑80 D↑90')).toBe('Tab↓9 Tab↑50 Enter↓61 Enter↑80');
  });
});
