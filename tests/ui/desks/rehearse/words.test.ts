import { describe, expect, test } from 'vitest';
import { usHost } from '../../../../src/core/host/us.ts';
import { compareRuns } from '../../../../src/core/rehearse/compare.ts';
import { namesOf } from '../../../../src/core/rehearse/key-words.ts';
import { withTries } from '../../../../src/core/rehearse/remedies.ts';
import { shownText } from '../../../../src/core/rehearse/shown-text.ts';
import { slipsOf } from '../../../../src/core/rehearse/slips.ts';
import { differenceWords, laterWords } from '../../../../src/ui/desks/rehearse/beside/beside-words.ts';
import {
  aboutWords,
  newNote,
  pinOptions,
  pinsOf,
  whenWords,
} from '../../../../src/ui/desks/rehearse/diary/diary-words.ts';
import { outParts } from '../../../../src/ui/desks/rehearse/out-parts.ts';
import { withCode, withoutKey } from '../../../../src/ui/desks/rehearse/overlay/overlay-edits.ts';
import {
  holdTapsOf,
  timingEverywhere,
  windowEverywhere,
} from '../../../../src/ui/desks/rehearse/settings/settings-edits.ts';
import { missingWords, takenKeys } from '../../../../src/ui/desks/rehearse/source/source-words.ts';
import { countsWords, fileNameOf } from '../../../../src/ui/desks/rehearse/source/stream-words.ts';
import {
  happenedAt,
  momentWords,
  stateRows,
  wordRows,
} from '../../../../src/ui/desks/rehearse/time-line/moment-words.ts';
import { momentBeside, momentNear } from '../../../../src/ui/desks/rehearse/time-line/moments.ts';
import { played, sample } from '../../../core/rehearse/played.ts';

const names = namesOf(sample, usHost);
const run = played('R↓0 T↓30 R↑80 T↑90 F↓300 F↑390');

describe('a moment of the time line', () => {
  test('the next and the last one', () => {
    expect([0, 30, 89, 90, 390].map((t) => momentBeside(run, t, 1))).toEqual([30, 80, 90, 300, 390]);
    expect([0, 30, 300].map((t) => momentBeside(run, t, -1))).toEqual([0, 0, 90]);
  });

  test('the one nearest to a click', () => {
    expect([momentNear(run, 84, 10), momentNear(run, 86, 10), momentNear(run, 200, 10)]).toEqual([
      80, 90, 200,
    ]);
  });

  test('what happens at it, and how the design stands', () => {
    expect(happenedAt(run, 30, names)).toEqual([
      'T goes down',
      'R was still down when T came after 30 ms: chord Tab (window 45 ms)',
      'Out: Tab',
    ]);
    expect(momentWords(run, 31, names)).toBe('at 31 ms');
    expect(Object.fromEntries(stateRows(run, 10, names))).toEqual({
      'Layers on': 'base',
      'Modifiers on': 'none',
      Waits: 'R for Tab',
      Open: 'nothing',
      'Keys down': 'R',
    });
    expect(Object.fromEntries(stateRows(run, 310, names)).Open).toBe('F: tap or hold');
  });

  test('the stream in words, from a moment on and so many lines', () => {
    expect(wordRows(run, 300, 10, names).map(({ t, what }) => `${t} ${what}`)).toEqual([
      '300 F goes down',
      '300 F: tap or hold? Settled after 200 ms at the latest',
      '390 F comes up',
      '390 F came up after 90 ms: tap',
      '390 Out: f',
    ]);
    expect(wordRows(run, 0, 3, names)).toHaveLength(3);
  });
});

test('what came out is cut at its slips', () => {
  const typed = played('A↓0 A↑50 R↓200 T↓230 R↑280 T↑290 S↓500 S↑550 D↓700 D↑750');
  const { tokens } = shownText(typed.items);
  const parts = outParts(tokens, slipsOf(typed, 'artsh'));
  expect(parts.map(({ tokens: own, slip }) => [own.map(({ text }) => text).join(''), slip?.meant])).toEqual([
    ['a', undefined],
    ['\t', 'rt'],
    ['s', undefined],
    ['d', 'h'],
  ]);
});

describe('settings for the whole design', () => {
  test('a field that a binding has of its own is set there too', () => {
    const before = withTries(sample, [{ edit: 'set-timing', timing: { holdAfterMs: 250 } }]);
    const after = withTries(before, [timingEverywhere(before, { holdAfterMs: 160 }, 'Hold after 160 ms')]);
    expect(after.timing?.holdAfterMs).toBe(160);
    expect(holdTapsOf(after).map(({ binding }) => binding.holdAfterMs)).toEqual([160]);
  });

  test('one window for all chords', () => {
    const after = withTries(sample, [windowEverywhere(sample, 60, 'Windows')]);
    expect(after.chords?.map(({ windowMs }) => windowMs)).toEqual([60, 60]);
  });
});

describe('beside', () => {
  test('words for what differs and for what comes later', () => {
    const slower = withTries(sample, [{ edit: 'change-chord', chord: 'rt', to: { windowMs: 20 } }]);
    const { differences, alike, laterMs } = compareRuns(
      run,
      played('R↓0 T↓30 R↑80 T↑90 F↓300 F↑390', slower),
    );
    expect(differences.map(({ one, other }) => [differenceWords(one), differenceWords(other)])).toEqual([
      ['⇥', 'rt'],
    ]);
    expect(laterWords(differences.length, alike, laterMs)).toBe('1 place differs; 1 output is alike.');
    expect(laterWords(0, 5, { mean: -20, most: -35 })).toBe(
      'Nothing differs in 5 outputs. What is alike comes 20 ms sooner beside it on average, 35 ms sooner at most.',
    );
    expect(differenceWords([])).toBe('–');
  });
});

describe('the diary', () => {
  test.each([
    ['design', {}, 'about the design'],
    ['keys', { keys: ['R', 'T'] }, 'about R and T'],
    ['key F', { keys: ['F'] }, 'about F'],
    ['layer digits', { layer: 'digits' }, 'about the layer digits'],
    ['chord rt', { chord: 'rt' }, 'about the chord Tab'],
  ])('a note about %s', (value, pins, words) => {
    expect(pinOptions(sample, ['R', 'T'], names).map((option) => option.value)).toContain(value);
    expect(pinsOf(value, ['R', 'T'])).toEqual(pins);
    const note = newNote(sample, 'slow', pinsOf(value, ['R', 'T']), '2026-05-04T18:30:00.000Z');
    expect(aboutWords(note, names)).toBe(words);
  });

  test('says whether the design is still as it was', () => {
    const note = newNote(sample, 'slow', {}, '2026-05-04T18:30:00.000Z');
    expect(whenWords(note, sample)).toBe('2026-05-04, with the design as it is');
    expect(whenWords(note, { ...sample, timing: { holdAfterMs: 170 } })).toBe(
      '2026-05-04, before later changes',
    );
    const second = newNote({ ...sample, diary: [note] }, 'more', {}, '2026-05-05T18:30:00.000Z');
    expect([note.id, second.id]).toEqual(['note1', 'note2']);
  });
});

describe('where presses come from', () => {
  test('what cannot be typed', () => {
    expect(missingWords(['£', ' '])).toBe('This design has no way to type £ and Space: left out.');
  });

  test.each([
    [['KeyA', 'KeyC'], false, 0],
    [['AltLeft', 'MetaLeft', 'ControlLeft'], false, 3],
    [['AltLeft', 'MetaLeft', 'ControlLeft'], true, 0],
    [['CapsLock'], true, 1],
  ])('keys that a browser takes for itself: %o, locked %s', (codes, locked, count) => {
    expect(takenKeys(codes, locked)).toHaveLength(count);
  });

  test('a stream in words, and its file', () => {
    const stream = {
      name: 'Hold after 160!',
      made: { how: 'typed' as const },
      meant: null,
      events: run.events,
    };
    expect(countsWords(stream)).toBe('3 presses, 0.4 s, typed');
    expect(fileNameOf(stream)).toBe('hold-after-160.presses.json');
    expect(fileNameOf({ ...stream, name: '!' })).toBe('stream.presses.json');
  });

  test('a code stands for one key, and a key has one code', () => {
    const keys = { KeyA: 'L1', KeyB: 'L2' };
    expect(withCode(keys, 'KeyC', 'L1')).toEqual({ KeyB: 'L2', KeyC: 'L1' });
    expect(withCode(keys, 'KeyB', 'L1')).toEqual({ KeyB: 'L1' });
    expect(withoutKey(keys, 'L2')).toEqual({ KeyA: 'L1' });
  });
});
