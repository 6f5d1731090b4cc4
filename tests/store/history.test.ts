import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HISTORY_STEPS, type History, redone, undone, withStep } from '../../src/store/history.ts';
import { sample } from './sample.ts';

const named = (name: string) => ({ ...sample, name });
const start: History = { keymap: named('0'), past: [], future: [] };

function stepped(count: number): History {
  let history = start;
  for (let number = 1; number <= count; number++) {
    history = withStep(history, `step ${number}`, named(String(number)));
  }
  return history;
}

describe('history', () => {
  test('keeps at least 500 steps, and at most as many as it says', () => {
    expect(HISTORY_STEPS).toBeGreaterThanOrEqual(500);
    const history = stepped(HISTORY_STEPS + 5);
    expect(history.past).toHaveLength(HISTORY_STEPS);
    expect(history.past[0]?.title).toBe('step 6');
  });

  test('all 500 steps can be taken back and made again', () => {
    let history: History = stepped(500);
    for (let step = 0; step < 500; step++) history = undone(history) ?? history;
    expect(history.keymap).toBe(start.keymap);
    expect(undone(history)).toBeNull();
    for (let step = 0; step < 500; step++) history = redone(history) ?? history;
    expect(history.keymap.name).toBe('500');
    expect(redone(history)).toBeNull();
  });

  test('a step names what it undoes and what it redoes', () => {
    const back = undone(stepped(2));
    expect(back?.past.at(-1)?.title).toBe('step 1');
    expect(back?.future[0]?.title).toBe('step 2');
  });

  test('a new step forgets what had been taken back', () => {
    const back = undone(stepped(3)) ?? start;
    expect(withStep(back, 'other', named('x')).future).toEqual([]);
  });

  test('is a list with a finger in it, whatever is done (against a plain model)', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('do', 'undo', 'redo'), { maxLength: 60 }), (commands) => {
        let history = start;
        const states = ['0'];
        let at = 0;
        commands.forEach((command, index) => {
          if (command === 'do') {
            states.splice(++at, states.length, `${index + 1}!`);
            history = withStep(history, 'a step', named(`${index + 1}!`));
          } else if (command === 'undo') {
            at = Math.max(0, at - 1);
            history = undone(history) ?? history;
          } else {
            at = Math.min(states.length - 1, at + 1);
            history = redone(history) ?? history;
          }
          expect(history.keymap.name).toBe(states[at]);
          expect(history.past).toHaveLength(at);
          expect(history.future).toHaveLength(states.length - 1 - at);
        });
      }),
      { numRuns: 300 },
    );
  });
});
