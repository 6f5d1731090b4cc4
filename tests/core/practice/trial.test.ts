import { expect, test } from 'vitest';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { type Asked, BoardTrial, EngineTrial, type Trial } from '../../../src/core/practice/trial.ts';
import { shippedTable } from '../host/shipped-tables.ts';
import { eventsIn, need, sample, waysOf } from './sample.ts';

const NEEDS = ['(', ')', 's', 'k', '1', 'f', 'S'];
const ways = waysOf(NEEDS);

function asked(text: string, next?: string): Asked {
  const way = ways.of(text);
  if (way === null) throw new Error(`no way to ${text}`);
  return { need: need(text), way, next: next === undefined ? undefined : need(next), oldKeys: [] };
}

/** Answers the needs one after the other, as presses come; "✓" for one given, the faults for a slip. */
class Answers {
  readonly told: string[] = [];
  readonly #needs: readonly string[];
  #at = 0;

  constructor(needs: readonly string[]) {
    this.#needs = needs;
  }

  take(trial: Trial): void {
    for (;;) {
      const need = this.#needs[this.#at];
      if (need === undefined) return;
      const event = trial.take(asked(need, this.#needs[this.#at + 1]));
      if (event === null) return;
      if (event.what === 'done') this.#at++;
      const faults = event.what === 'slip' ? event.diagnosis.faults.map(({ fault }) => fault).join(', ') : '';
      this.told.push(event.what === 'done' ? `${need} ✓ ${event.t}` : `${need} ✗ ${faults}`);
    }
  }
}

function typed(stream: string, ...needs: string[]) {
  const trial = new EngineTrial(sample, ways);
  const answers = new Answers(needs);
  for (const event of eventsIn(stream)) {
    trial.advanceTo(event.t);
    answers.take(trial);
    trial.press(event);
    answers.take(trial);
  }
  trial.advanceTo(1e6);
  answers.take(trial);
  return answers.told;
}

test('a layer key held over two needs serves both', () => {
  expect(typed('RT2↓0 L24↓250 L24↑300 L23↓400 L23↑450 RT2↑500', '(', ')')).toEqual(['( ✓ 250', ') ✓ 400']);
});

test('a wrong press is told once, and the need stays asked for', () => {
  expect(typed('L23↓0 L23↑80 R23↓300 R23↑350', 'k')).toEqual(['k ✗ mirrored-hand', 'k ✓ 300']);
});

test('a Backspace after a wrong press is let off, one before it is not', () => {
  expect(typed('L23↓0 L23↑80 RT1↓200 RT1↑250 R23↓300 R23↑350', 'k')).toEqual([
    'k ✗ mirrored-hand',
    'k ✓ 300',
  ]);
  expect(typed('RT1↓0 RT1↑50 R23↓300 R23↑350', 'k')).toEqual(['k ✗ other-key', 'k ✓ 300']);
});

test('a tap held too long gives nothing and is told all the same', () => {
  expect(typed('L22↓0 L22↑400 L22↓600 L22↑650', 'f')).toEqual(['f ✗ hold-for-tap', 'f ✓ 650']);
});

test('a slow chord is incomplete at first, then missed, then there', () => {
  expect(typed('L32↓0 L33↓71 L32↑120 L33↑140 L32↓400 L33↓420 L32↑500 L33↑510', '1')).toEqual([
    '1 ✗ chord-incomplete',
    '1 ✗ chord-missed',
    '1 ✓ 420',
  ]);
});

test('from a real board the computer says what was typed', () => {
  const trial = new BoardTrial(sample, usHost);
  const answers = new Answers(['k', '(']);
  const send = (code: string, key: string, timeMs: number) => {
    trial.receive({ kind: 'down', code, key, timeMs });
    trial.receive({ kind: 'up', code, key, timeMs: timeMs + 20 });
    answers.take(trial);
  };
  send('KeyD', 'd', 0);
  trial.receive({ kind: 'down', code: 'Escape', key: 'Escape', timeMs: 100 });
  trial.receive({ kind: 'up', code: 'Escape', key: '', timeMs: 1100 });
  answers.take(trial);
  send('KeyK', 'k', 1300);
  trial.receive({ kind: 'down', code: 'ShiftLeft', key: 'Shift', timeMs: 1400 });
  send('Digit9', '(', 1450);
  trial.receive({ kind: 'up', code: 'ShiftLeft', key: 'Shift', timeMs: 1500 });
  expect(answers.told).toEqual(['k ✗ mirrored-hand', 'k ✓ 1300', '( ✓ 1450']);
});

test.each([
  ['tapped, it is typed', 'Escape↓0 Escape↑499', { what: 'done', t: 0 }],
  ['held for half a second, it asks the page', 'Escape↓0 Escape↑500', null],
  [
    'with another key, it is typed however long',
    'Escape↓0 KeyK↓80 KeyK↑120 Escape↑900',
    { what: 'done', t: 0 },
  ],
])('Escape from a real board: %s', (_, presses, told) => {
  const trial = new BoardTrial(sample, usHost);
  for (const [, code = '', kind, t] of presses.matchAll(/(\w+)([↓↑])(\d+)/g))
    trial.receive({ kind: kind === '↓' ? 'down' : 'up', code, key: code, timeMs: Number(t) });
  expect(trial.take({ ...asked('k'), need: need('key:Escape') })).toEqual(told);
});

test.each([
  ['as the composed letter', 'ê'],
  ['as the bare letter', 'e'],
  ['as nothing in particular', 'Process'],
])('after a dead key a browser may tell the next key %s', (_, key) => {
  const host = hostFromTable(shippedTable('fr'));
  const trial = new BoardTrial(sample, host);
  // On this layout the circumflex is a dead key where `us` has the left bracket.
  trial.receive({ kind: 'down', code: 'BracketLeft', key: 'Dead', timeMs: 0 });
  trial.receive({ kind: 'up', code: 'BracketLeft', key: 'Dead', timeMs: 50 });
  trial.receive({ kind: 'down', code: 'KeyE', key, timeMs: 100 });
  expect(trial.take({ ...asked('k'), need: need('ê') })).toEqual({ what: 'done', t: 100 });
});
