import { describe, expect, test } from 'vitest';
import { play } from '../../../src/core/engine/play.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Action, Binding, Chord } from '../../../src/core/keymap/types.ts';
import { both, char, chord, design, held, key, latchCode, lockCode, text } from './design.ts';
import { eventsIn, playerOf, tracerOf, written } from './notation.ts';

const shift = { tap: key('ShiftLeft') };
const repeat: Action = { do: 'repeat' };
const word: Action = { do: 'word-shift' };
const onShift = (tap: Action, shifted: Binding['onShift']): Binding => ({
  tap,
  ...(shifted ? { onShift: shifted } : {}),
});
const wide = (keys: string, action: Action, more: Partial<Chord>): Chord => ({
  ...chord(keys, 50, action),
  ...more,
});

describe('G5 a chord that is released at its last key', () => {
  const base = { J: key('J'), K: key('K'), L: key('L'), A: key('A') };
  const first = playerOf(design({ base, chords: [chord('JKL', 50, key('Tab'))] }));
  const last = playerOf(design({ base, chords: [wide('JKL', key('Tab'), { release: 'last-up' })] }));
  test.each([
    ['three keys up one after another', 'J↓0 K↓5 L↓9 J↑80 L↑90 K↑120', 'Tab↓9 Tab↑80', 'Tab↓9 Tab↑120'],
    [
      'another key inside',
      'J↓0 K↓5 L↓9 J↑80 A↓85 A↑95 K↑99 L↑120',
      'Tab↓9 Tab↑80 A↓85 A↑95',
      'Tab↓9 A↓85 A↑95 Tab↑120',
    ],
  ])('G5 %s', (_, stream, atFirst, atLast) => {
    expect([first(stream), last(stream)]).toEqual([atFirst, atLast]);
  });
  test('G5, G8 its last up waits behind the first down of its next firing, whose down is then passed on before it', () => {
    const two = playerOf(design({ base, chords: [wide('JK', key('Tab'), { release: 'last-up' })] }));
    expect(two('J↓0 K↓0 J↑40 J↓50 K↑60 K↓70 J↑100 K↑110')).toBe('Tab↓0 Tab↑110');
  });
  test('G5 holds a layer until the last of its keys is up', () => {
    const keymap = design({
      base,
      layers: { up: { A: key('1') } },
      chords: [wide('JK', held('up'), { release: 'last-up', layers: ['base'] })],
    });
    expect(playerOf(keymap)('J↓0 K↓0 J↑40 A↓50 A↑60 K↑70 A↓80 A↑90')).toBe('1↓50 1↑60 A↓80 A↑90');
  });
});

describe('S9, S12 a chord with a tap and a hold', () => {
  const base = { J: key('J'), K: key('K'), A: key('A') };
  const of = (more: Partial<Chord>, timing = {}) =>
    playerOf(
      design({ base, timing, chords: [wide('JK', key('Tab'), { hold: key('ControlLeft'), ...more })] }),
    );
  test.each([
    ['S3 up within its time, counted from its first key: tap', {}, 'J↓0 K↓30 J↑200 K↑210', 'Tab↓200 Tab↑200'],
    ['S8 down for longer: hold', {}, 'J↓0 K↓30 J↑200.25 K↑210', 'ControlLeft↓200 ControlLeft↑200.25'],
    ['its own hold after', { holdAfterMs: 100 }, 'J↓0 K↓30 J↑150 K↑210', 'ControlLeft↓100 ControlLeft↑150'],
    [
      'S5 a press inside',
      { holdBy: 'press-inside' as const },
      'J↓0 K↓30 A↓60 A↑70 J↑90 K↑91',
      'ControlLeft↓60 A↓60 A↑70 ControlLeft↑90',
    ],
    [
      'S11 again: tap at once',
      { againWithinMs: 100 },
      'J↓0 K↓0 J↑40 K↑40 J↓90 K↓90 J↑700 K↑700',
      'Tab↓40 Tab↑40 Tab↓90 Tab↑700',
    ],
    [
      'with the last key up',
      { release: 'last-up' as const },
      'J↓0 K↓30 J↑100 K↑250',
      'ControlLeft↓200 ControlLeft↑250',
    ],
  ])('%s', (_, more, stream, output) => {
    expect(of(more)(stream)).toBe(output);
  });
  test('S4, S10 quiet before and same hand taps of the design are not for a firing', () => {
    const timing = { quietBeforeMs: 500, sameHandTaps: true, holdBy: 'press-inside' as const };
    expect(of({}, timing)('A↓0 A↑10 J↓60 K↓60 A↓90 A↑95 J↑99 K↑99')).toBe(
      'A↓0 A↑10 ControlLeft↓90 A↓90 A↑95 ControlLeft↑99',
    );
  });
});

describe('S14 a key that gives its tap when it was held alone', () => {
  const base = {
    F: both(key('F'), key('ShiftLeft')),
    D: key('D'),
    J: key('J'),
    1: both(key('Space'), held('up')),
  };
  const layers = { up: { J: key('1') } };
  const alone = (more = {}) => design({ base, layers, timing: { tapIfAlone: true, ...more } });
  test.each([
    ['held long, nothing inside: tap when it comes up', 'F↓0 F↑900', 'F↓900 F↑900'],
    ['within its time: tap as ever', 'F↓0 F↑150', 'F↓150 F↑150'],
    [
      'a press after its time: hold, from then on',
      'F↓0 J↓500 J↑540 F↑600',
      'ShiftLeft↓500 J↓500 J↑540 ShiftLeft↑600',
    ],
    [
      'a press within its time: hold at its time',
      'F↓0 J↓100 F↑300 J↑310',
      'ShiftLeft↓200 J↓200 ShiftLeft↑300 J↑310',
    ],
    [
      'a press exactly at its time: it was there first',
      'F↓0 J↓200 F↑300 J↑310',
      'ShiftLeft↓200 J↓200 ShiftLeft↑300 J↑310',
    ],
    ['a key that came up inside was not pressed inside', 'J↓0 F↓10 J↑50 F↑900', 'J↓0 J↑210 F↓900 F↑900'],
    ['the ups of others go past it when it is alone', 'J↓0 F↓10 J↑350 F↑900', 'J↓0 J↑350 F↓900 F↑900'],
    ['a layer that is held alone', '1↓0 J↓500 J↑540 1↑600 J↓700 J↑710', '1↓500 1↑540 J↓700 J↑710'],
  ])('S14 %s', (_, stream, output) => {
    expect(playerOf(alone())(stream)).toBe(output);
  });
  test('S14 comes before same hand taps', () => {
    const keymap = alone({ sameHandTaps: true });
    expect(tracerOf(keymap, 'alone', 'tap', 'hold')('F↓0 D↓400 D↑420 F↑430')).toEqual([
      'S14 alone F@200',
      'S14 hold F@400',
      'S9 tap D@400',
    ]);
    expect(tracerOf(keymap, 'tap', 'hold')('F↓0 D↓100 D↑420 F↑430')[0]).toBe('S4 tap F@100');
  });
});

describe('A8 another result under Shift', () => {
  const base = {
    1: shift,
    2: { tap: latchCode('ShiftLeft') },
    3: { tap: key('ShiftRight') },
    4: { tap: lockCode('ShiftLeft') },
    J: onShift(key('Comma'), { do: 'key', code: 'Semicolon' }),
    K: onShift(key('Period'), { do: 'key', code: 'Slash', with: ['ShiftLeft'] }),
    L: onShift(key('Backspace'), { do: 'nothing' }),
    H: onShift(held('up'), { do: 'char', char: 'é' }),
    A: key('A'),
  };
  const keymap = design({ base, layers: { up: { A: key('1') } } });
  const playing = playerOf(keymap);
  test.each([
    ['no Shift: the tap', 'J↓0 J↑50', 'Comma↓0 Comma↑50'],
    [
      'Shift held: in its place, Shift lifted and not pressed again for nothing',
      '1↓0 J↓50 J↑90 1↑99',
      'ShiftLeft↓0 ShiftLeft↑50 Semicolon↓50 Semicolon↑90',
    ],
    [
      'Shift comes back for what follows',
      '1↓0 J↓50 J↑90 A↓95 A↑98 1↑99',
      'ShiftLeft↓0 ShiftLeft↑50 Semicolon↓50 Semicolon↑90 ShiftLeft↓95 A↓95 A↑98 ShiftLeft↑99',
    ],
    [
      'also while it is still down',
      '1↓0 J↓50 A↓60 J↑90 A↑98 1↑99',
      'ShiftLeft↓0 ShiftLeft↑50 Semicolon↓50 ShiftLeft↓60 A↓60 Semicolon↑90 A↑98 ShiftLeft↑99',
    ],
    [
      'twice: it stays lifted',
      '1↓0 J↓50 J↑60 J↓70 J↑80 1↑99',
      'ShiftLeft↓0 ShiftLeft↑50 Semicolon↓50 Semicolon↑60 Semicolon↓70 Semicolon↑80',
    ],
    ['Shift up first', '1↓0 J↓50 1↑60 J↑90', 'ShiftLeft↓0 ShiftLeft↑50 Semicolon↓50 Semicolon↑90'],
    [
      'both Shifts',
      '3↓0 1↓10 J↓50 J↑60 3↑70 A↓80 A↑85 1↑90',
      'ShiftRight↓0 ShiftLeft↓10 ShiftLeft↑50 ShiftRight↑50 Semicolon↓50 Semicolon↑60 ShiftLeft↓80 A↓80 A↑85 ShiftLeft↑90',
    ],
    [
      'a result with a Shift of its own needs no lifting',
      '1↓0 K↓50 K↑60 1↑99',
      'ShiftLeft↓0 Slash↓50 Slash↑60 ShiftLeft↑99',
    ],
    ['nothing', '1↓0 L↓50 L↑60 1↑99', 'ShiftLeft↓0 ShiftLeft↑99'],
    [
      'a latched Shift is used up and leaves no tap behind',
      '2↓0 2↑10 J↓50 J↑60 A↓80 A↑85',
      'ShiftLeft↓0 ShiftLeft↑50 Semicolon↓50 Semicolon↑60 A↓80 A↑85',
    ],
    [
      'a Shift latched and used by another key is none for this one',
      '2↓0 2↑10 A↓20 J↓30 A↑40 J↑50',
      'ShiftLeft↓0 A↓20 ShiftLeft↑30 Comma↓30 A↑40 Comma↑50',
    ],
    [
      'a locked Shift comes back with the next key',
      '4↓0 4↑10 J↓20 J↑30 A↓40 A↑50 4↓60 4↑70',
      'ShiftLeft↓0 ShiftLeft↑20 Semicolon↓20 Semicolon↑30 ShiftLeft↓40 A↓40 A↑50 ShiftLeft↑60',
    ],
    [
      'a layer without Shift, a character with it',
      'H↓0 A↓10 A↑20 H↑30 1↓40 H↓50 H↑60 A↓70 A↑75 1↑80',
      '1↓10 1↑20 ShiftLeft↓40 ShiftLeft↑50 Quote↓50 Quote↑50 E↓50 E↑60 ShiftLeft↓70 A↓70 A↑75 ShiftLeft↑80',
    ],
  ])('A8 %s', (_, stream, output) => {
    expect(playing(stream)).toBe(output);
  });
  test('A8 what is lifted is marked, so that it is no tap of Shift', () => {
    const played = play(keymap, eventsIn('1↓0 J↓50 J↑90 A↓95 A↑98 1↑99'), usHost);
    const marked = played.ok ? played.value.output.filter(({ lifting }) => lifting) : [];
    expect(written(marked)).toBe('ShiftLeft↑50 ShiftLeft↓95');
  });
});

describe('A9 repeat', () => {
  const base = {
    1: shift,
    2: { tap: latchCode('ShiftLeft') },
    R: { tap: repeat },
    A: key('A'),
    T: text('ab'),
    E: char('é'),
    U: char('ß'),
    Q: key('C', 'ControlLeft'),
    J: onShift(key('Comma'), { do: 'key', code: 'Semicolon' }),
  };
  const playing = playerOf(design({ base }));
  test.each([
    ['nothing typed yet', 'R↓0 R↑10', ''],
    ['the last key, held as long as this one is', 'A↓0 A↑10 R↓20 R↑90', 'A↓0 A↑10 A↓20 A↑90'],
    [
      'a repeat is not remembered, so it can be repeated',
      'A↓0 A↑10 R↓20 R↑30 R↓40 R↑50',
      'A↓0 A↑10 A↓20 A↑30 A↓40 A↑50',
    ],
    [
      'with its own modifiers',
      'Q↓0 Q↑10 R↓20 R↑30',
      'ControlLeft↓0 C↓0 C↑10 ControlLeft↑10 ControlLeft↓20 C↓20 C↑30 ControlLeft↑30',
    ],
    [
      'under the modifiers of now',
      'A↓0 A↑10 1↓15 R↓20 R↑30 1↑40',
      'A↓0 A↑10 ShiftLeft↓15 A↓20 A↑30 ShiftLeft↑40',
    ],
    [
      'a modifier is no output',
      'A↓0 A↑10 1↓15 1↑17 R↓20 R↑30',
      'A↓0 A↑10 ShiftLeft↓15 ShiftLeft↑17 A↓20 A↑30',
    ],
    ['a character that cannot be typed is none either', 'A↓0 A↑10 U↓15 U↑17 R↓20 R↑30', 'A↓0 A↑10 A↓20 A↑30'],
    ['a text', 'T↓0 T↑10 R↓20 R↑30', 'A↓0 A↑0 B↓0 B↑0 A↓20 A↑20 B↓20 B↑20'],
    [
      'a dead key and its letter',
      'E↓0 E↑10 R↓20 R↑30',
      'Quote↓0 Quote↑0 E↓0 E↑10 Quote↓20 Quote↑20 E↓20 E↑30',
    ],
    [
      'the result that came under Shift, without Shift too',
      '1↓0 J↓10 J↑20 1↑30 R↓40 R↑50',
      'ShiftLeft↓0 ShiftLeft↑10 Semicolon↓10 Semicolon↑20 Semicolon↓40 Semicolon↑50',
    ],
    [
      'it types, so a latch is used',
      'A↓0 A↑10 2↓20 2↑25 R↓30 R↑40 A↓50 A↑60',
      'A↓0 A↑10 ShiftLeft↓20 A↓30 A↑40 ShiftLeft↑40 A↓50 A↑60',
    ],
  ])('A9 %s', (_, stream, output) => {
    expect(playing(stream)).toBe(output);
  });
});

describe('A10 Shift for one word', () => {
  const base = {
    W: { tap: word },
    1: shift,
    2: { tap: key('ControlLeft') },
    A: key('A'),
    S: key('S'),
    D: key('1'),
    F: key('Minus'),
    G: key('Comma'),
    H: key('Backspace'),
    J: key('Space'),
    K: text('as'),
    L: text('a s'),
    R: { tap: repeat },
    U: onShift(key('Period'), { do: 'key', code: 'KeyB' }),
  };
  const keymap = design({ base });
  const playing = (stream: string) => {
    const played = play(keymap, eventsIn(stream), usHost);
    return played.ok ? written(played.value.output) : played.problem.reason;
  };
  test.each([
    [
      'letters are capitals, Shift is up before the next key',
      'W↓0 W↑5 A↓10 S↓15 A↑20 S↑30',
      'ShiftLeft↓10 A↓10 ShiftLeft↑10 ShiftLeft↓15 S↓15 ShiftLeft↑15 A↑20 S↑30',
    ],
    [
      'digits, hyphens and Backspace go on with it',
      'W↓0 W↑5 D↓10 D↑11 F↓20 F↑21 H↓30 H↑31 A↓40 A↑41',
      '1↓10 1↑11 Minus↓20 Minus↑21 Backspace↓30 Backspace↑31 ShiftLeft↓40 A↓40 ShiftLeft↑40 A↑41',
    ],
    ['a space ends it', 'W↓0 W↑5 J↓10 J↑11 A↓20 A↑21', 'Space↓10 Space↑11 A↓20 A↑21'],
    ['a comma too', 'W↓0 W↑5 G↓10 G↑11 A↓20 A↑21', 'Comma↓10 Comma↑11 A↓20 A↑21'],
    [
      'a second press',
      'W↓0 W↑5 A↓10 A↑11 W↓15 W↑17 A↓20 A↑21',
      'ShiftLeft↓10 A↓10 ShiftLeft↑10 A↑11 A↓20 A↑21',
    ],
    [
      'a shortcut ends it',
      'W↓0 W↑5 2↓8 A↓10 A↑11 2↑12 A↓20 A↑21',
      'ControlLeft↓8 A↓10 A↑11 ControlLeft↑12 A↓20 A↑21',
    ],
    ['Shift held besides', 'W↓0 W↑5 1↓8 A↓10 A↑11 1↑12', 'ShiftLeft↓8 A↓10 A↑11 ShiftLeft↑12'],
    [
      'a text that is a word, and one that is not',
      'W↓0 W↑5 K↓10 K↑11 L↓20 L↑21',
      'ShiftLeft↓10 A↓10 A↑10 ShiftLeft↑10 ShiftLeft↓10 S↓10 S↑10 ShiftLeft↑10 A↓20 A↑20 Space↓20 Space↑20 S↓20 S↑20',
    ],
    [
      'repeat goes on with it, in capitals',
      'A↓0 A↑1 W↓2 W↑5 R↓10 R↑11',
      'A↓0 A↑1 ShiftLeft↓10 A↓10 ShiftLeft↑10 A↑11',
    ],
    ['it is no Shift for a result under Shift', 'W↓0 W↑5 U↓10 U↑11', 'Period↓10 Period↑11'],
    [
      'such a result goes on with it but gets no Shift',
      'W↓0 W↑5 1↓7 U↓10 U↑11 1↑12 A↓20 A↑21',
      'ShiftLeft↓7 ShiftLeft↑10 B↓10 B↑11 ShiftLeft↓20 A↓20 ShiftLeft↑20 A↑21',
    ],
  ])('A10 %s', (_, stream, output) => {
    expect(playing(stream)).toBe(output);
  });
});
