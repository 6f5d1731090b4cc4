import { keyName } from '../board/key-name.ts';
import { codeName } from '../host/code-names.ts';
import { actionInWords, type LegendSource } from '../host/legend.ts';
import { layerWords } from '../keymap/action-words.ts';
import { isCode } from '../keymap/codes.ts';
import { chordName } from '../practice/fault-words.ts';
import type { HeldState } from './computer-state.ts';
import { carriedIn } from './heard.ts';
import type { StepResult } from './judge.ts';
import type { CheckStep } from './steps.ts';

/** What a step is about: "right index home, Letters, held", "chord Tab". */
export function stepName({ keymap }: LegendSource, step: Pick<CheckStep, 'at'>): string {
  if ('chord' in step.at) {
    return `chord ${chordName(keymap, step.at.chord)}${sideWords(step.at.side)}`;
  }
  const { place, side } = step.at;
  return `${keyName(keymap.board, place.key)} on ${layerWords(keymap, place.layer)}${sideWords(side)}`;
}

function sideWords(side: 'tap' | 'onShift' | 'hold'): string {
  if (side === 'hold') return ', held';
  return side === 'onShift' ? ', with Shift' : '';
}

/** What to do for a step: one line per move, "hold right inner thumb", "press L and M together". */
export function stepMoves({ keymap }: LegendSource, step: CheckStep): readonly string[] {
  return step.way.map(({ move, keys }) => {
    const names = keys.map((key) => keyName(keymap.board, key)).join(' and ');
    if (move === 'release') return `let ${names} go`;
    return `${move} ${names}${keys.length > 1 ? ' together' : ''}`;
  });
}

/** What a right board gives for it. */
export function stepGives(source: LegendSource, step: Pick<CheckStep, 'action'>): string {
  return actionInWords(step.action, source);
}

/** More strokes than these are only counted. */
const MOST_TOLD = 5;

/** What came, as strokes in words, and what was down before it; "nothing" for nothing. */
export function cameWords({ strokes }: StepResult): string {
  if (strokes.length === 0) return 'nothing';
  const told = strokes
    .slice(0, MOST_TOLD)
    .map(({ code, with: around }) => [...around, code].map(named).join(' + '));
  const more = strokes.length > MOST_TOLD ? `, and ${strokes.length - MOST_TOLD} more` : '';
  const carried = carriedIn(strokes).map(stateName);
  const before = carried.length > 0 ? `, with ${carried.join(' and ')} down from before` : '';
  return `${told.join(', then ')}${more}${before}`;
}

/** The name of a modifier that is down, left or right. */
export function stateName(state: HeldState): string {
  return state === 'AltGraph' ? 'AltGr' : state;
}

function named(code: string): string {
  return isCode(code) ? codeName(code) : code === '' ? 'a key that the browser does not name' : code;
}
