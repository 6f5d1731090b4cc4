import { type Code, isCode } from '../keymap/codes.ts';
import type { BoardFault } from './board-fault.ts';
import { stateOf } from './computer-state.ts';
import type { Checked } from './given-keys.ts';
import { carriedIn } from './heard.ts';
import { isRightButForCarried, type StepResult } from './judge.ts';

type SwitchFault = BoardFault & { fault: 'chatters' | 'stuck' };

/** Keys that chatter or stick, each told once: on every layer it is the same switch. By the shortest gap. */
export function switchFaults(checked: readonly Checked[]): readonly SwitchFault[] {
  const told = new Map<string, SwitchFault>();
  for (const { step, result } of checked) {
    if (step.keys.length > 1) continue;
    const [key = ''] = step.keys;
    for (const { code, gapMs } of result.bounces) {
      const known = told.get(`chatters ${key}`);
      const isShorter = known?.fault !== 'chatters' || gapMs < known.gapMs;
      if (isShorter && isOwn(step, code))
        told.set(`chatters ${key}`, { fault: 'chatters', key, code, gapMs, step: step.id });
    }
    for (const code of result.stuck) {
      if (!told.has(`stuck ${key}`) && isOwn(step, code))
        told.set(`stuck ${key}`, { fault: 'stuck', key, code, step: step.id });
    }
  }
  return [...told.values()];
}

/** Whether a code comes of the key that was pressed last, and not of one that was held. */
function isOwn({ expects, held }: Checked['step'], code: string): boolean {
  return held.length === 0 || expects.some((stroke) => stroke.code === code);
}

/**
 * Whether a step went wrong by nothing but keys that were down from before it: modifiers that came too much, or codes that
 * the computer could not hear again.
 */
export function spoiledBy(checked: readonly Checked[]): (each: Checked) => boolean {
  const stuck = new Set(checked.flatMap(({ result }) => result.stuck));
  return ({ step, result }) =>
    isRightButForCarried(step, result.strokes) ||
    step.expects.some(({ code, with: around }) =>
      [...around, code].some((each) => stuck.has(each) && !heardIn(result, each)),
    );
}

function heardIn({ strokes, verdict }: StepResult, code: string): boolean {
  return verdict === 'right' || strokes.some((stroke) => [...stroke.with, stroke.code].includes(code));
}

/** Modifiers that were down from before, where no key of the board is known to have left them so. */
export function modifiersDown(checked: readonly Checked[]): readonly BoardFault[] {
  const stuck = checked.flatMap(({ result }) => result.stuck).filter((code): code is Code => isCode(code));
  const known = new Set(stuck.map(stateOf));
  const own = checked.flatMap(({ step, result }) => {
    const states = carriedIn(result.strokes).filter((state) => !known.has(state));
    return states.length > 0 ? [{ step, states }] : [];
  });
  if (own.length === 0) return [];
  const states = [...new Set(own.flatMap((each) => each.states))];
  return [{ fault: 'modifier-down', states, steps: own.map(({ step }) => step.id) }];
}
