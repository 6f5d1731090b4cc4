import { describe, expect, test } from 'vitest';
import { usHost } from '../../../../../src/core/host/us.ts';
import { STANDARD_SEATS } from '../../../../../src/core/typist/standard-seats.ts';
import { CHORD_PROMPTS } from '../../../../../src/ui/desks/design/measure/chord-prompts.ts';
import { ChordTaker } from '../../../../../src/ui/desks/design/measure/chord-taker.ts';
import { legendsOf } from '../../../../../src/ui/desks/design/measure/key-legends.ts';
import {
  clockSentence,
  closeSentence,
  figureRows,
  missingSentences,
} from '../../../../../src/ui/desks/design/measure/measure-words.ts';
import { PARAGRAPHS } from '../../../../../src/ui/desks/design/measure/paragraphs.ts';
import { Session } from '../../../../../src/ui/desks/design/measure/session.ts';
import { TypingRecorder } from '../../../../../src/ui/desks/design/measure/typing-recorder.ts';

describe('recording what is typed', () => {
  const plain = { repeat: false, ctrlKey: false, metaKey: false, altKey: false };

  test('a key is down from its press to its release, whatever comes between', () => {
    const recorder = new TypingRecorder();
    recorder.down({ ...plain, code: 'KeyT', key: 't', timeStamp: 10 });
    recorder.down({ ...plain, code: 'KeyO', key: 'o', timeStamp: 80 });
    recorder.up({ code: 'KeyT', timeStamp: 95 });
    recorder.down({ ...plain, code: 'KeyO', key: 'o', timeStamp: 110, repeat: true });
    recorder.up({ code: 'KeyO', timeStamp: 150 });
    expect(recorder.keys).toEqual([
      { code: 'KeyT', char: 't', downMs: 10, upMs: 95 },
      { code: 'KeyO', char: 'o', downMs: 80, upMs: 150 },
    ]);
  });

  test('a shortcut and a key that types nothing count for nothing and break the run', () => {
    const recorder = new TypingRecorder();
    recorder.down({ ...plain, code: 'KeyC', key: 'c', timeStamp: 1, ctrlKey: true });
    recorder.down({ ...plain, code: 'Backspace', key: 'Backspace', timeStamp: 2 });
    expect(recorder.count).toBe(0);
    expect(recorder.keys.map(({ code, char }) => [code, char])).toEqual([
      ['', null],
      ['Backspace', null],
    ]);
  });
});

test('a session says how much there is, and what was measured of it has no keys and no order', () => {
  const session = new Session();
  expect(session.isEmpty).toBe(true);
  for (const [at, char] of [...'tiny'].entries()) {
    const code = `Key${char.toUpperCase()}`;
    const moment = { code, key: char, repeat: false, ctrlKey: false, metaKey: false, altKey: false };
    session.recorder.down({ ...moment, timeStamp: 1000 - 10 * at * at + 300 * at });
    session.recorder.up({ code, timeStamp: 1080 - 10 * at * at + 300 * at });
  }
  session.chords.push({ hands: 'one', onsetsMs: [0, 12] });
  expect(session.words).toBe('4 keystrokes and 1 chord');
  const { intervals, dwells, chords } = session.measured(null);
  expect(intervals.map(({ ms, band }) => [ms, band])).toEqual([
    [250, null],
    [270, null],
    [290, null],
  ]);
  expect([dwells.length, chords.length]).toEqual([4, 1]);
  expect(session.clockStepMs).toBe(80);
});

describe('taking chords', () => {
  const asked = ['KeyD', 'KeyF'];

  test.each([
    ['together', 'D↓0 F↓20 D↑90 F↑95', 'made 20'],
    ['in the other order', 'F↓5 D↓9 D↑90 F↑95', 'made 4'],
    ['the first is up before the second is down', 'D↓0 D↑60 F↓90 F↑150', 'apart'],
    ['both down, but long after one another', 'D↓0 F↓400 D↑500 F↑510', 'apart'],
    ['with another key', 'D↓0 G↓10 F↓20 D↑90 G↑95 F↑99', 'other-key'],
    ['twice, all keys up between', 'D↓0 F↓20 D↑90 F↑95 D↓200 F↓230 D↑290 F↑295', 'made 20, made 30'],
    [
      'a key that is kept down from the last one counts for nothing',
      'D↓0 F↓20 F↑90 F↓200 F↑250 D↑295',
      'made 20',
    ],
  ])('%s', (_, stream, outcome) => {
    const taker = new ChordTaker();
    const came = stream.split(' ').flatMap((step) => {
      const [, key = '', way, time] = /^(.)([↓↑])(\d+)$/.exec(step) ?? [];
      const attempt = way === '↓' ? taker.down(asked, `Key${key}`, Number(time)) : taker.up(`Key${key}`);
      return attempt === null ? [] : [attempt.came === 'made' ? `made ${attempt.spreadMs}` : attempt.came];
    });
    // What is typed after a failed attempt, until all keys are up, is part of it; a lone second key is an attempt again.
    expect(came.filter((each, at) => each !== came[at - 1] || each.startsWith('made')).join(', ')).toBe(
      outcome,
    );
  });
});

test('the prompts: twenty, of two and three keys that stand on the picture, none twice in a row', () => {
  expect(CHORD_PROMPTS.length).toBe(20);
  for (const [at, prompt] of CHORD_PROMPTS.entries()) {
    expect([2, 3]).toContain(prompt.length);
    expect(prompt.every((code) => STANDARD_SEATS.has(code))).toBe(true);
    expect(prompt).not.toEqual(CHORD_PROMPTS[at - 1]);
  }
});

test('the paragraphs are long enough', () => {
  for (const text of Object.values(PARAGRAPHS)) expect(text.length).toBeGreaterThan(310);
});

test('keys are called by what they have just typed, else by what the host has there', () => {
  const legendOf = legendsOf(usHost, [{ code: 'KeyY', char: 'z', downMs: 0, upMs: 1 }]);
  expect([legendOf('KeyY'), legendOf('KeyF'), legendOf('Semicolon')]).toEqual(['Z', 'F', ';']);
});

describe('in words', () => {
  const estimate = { value: 100, low: 90, high: 110, count: 200 };

  test('figures come with what they lie between, and the slow end of time is the low end of speed', () => {
    const rows = figureRows({
      intervals: { alphaMs: estimate, beta: estimate, wpm: 90, ratios: [] },
      dwells: null,
      spread: { value: 1.34, low: 1.1, high: 1.8, count: 20 },
    });
    expect(rows[0]?.what).toBe('Speed of your letters');
    const [low, high] = (rows[0]?.range.match(/\d+/g) ?? []).map(Number);
    expect(low).toBeLessThan(high ?? 0);
    expect(rows.at(-1)).toEqual({
      what: 'Chords, against skilled hands',
      figure: '1.3 times as wide',
      range: 'between 1.1 and 1.8 times as wide',
    });
  });

  test('what is missing is said', () => {
    expect(missingSentences({ intervals: null, dwells: null, spread: null })).toHaveLength(2);
    expect(missingSentences({ intervals: null, dwells: null, spread: estimate })[0]).toMatch(/0 intervals/);
  });

  test('a clock that is rounded is named, a fine one is not', () => {
    expect(clockSentence(0.1)).toBeNull();
    expect(clockSentence(16.7)).toMatch(/17 ms/);
  });

  test('what came within 60 ms stands beside what the model expects', () => {
    const plot = { stepMs: 20, counts: [1, 2, 3, 50], expected: [0.5, 1, 2.52, 60], beyond: 0 };
    expect(closeSentence(plot)).toMatch(/came 6 of them.*about 4\.0/);
  });
});
