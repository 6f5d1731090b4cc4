import { stateOf } from './computer-state.ts';
import type { ExpectedStroke } from './expected.ts';
import { type Bounce, carriedIn, type HeardKey, type HeardStroke, readHeard } from './heard.ts';
import type { CheckStep } from './steps.ts';

export type Verdict = 'right' | 'wrong' | 'silent';

/** What whoever checks has found by looking. */
export type EyeVerdict = 'right' | 'wrong';

/** What a step came to. Plain data, kept as it is. */
export interface StepResult {
  readonly step: string;
  readonly verdict: Verdict;
  /** What came. */
  readonly strokes: readonly HeardStroke[];
  /** The right keys came, but the computer made other characters of them. */
  readonly otherCharacters: boolean;
  readonly bounces: readonly Bounce[];
  /** Codes that were still down at the end. */
  readonly stuck: readonly string[];
}

/**
 * Judges a step by all that was heard while it was asked for. A key that bounces or sticks makes it wrong, and so does a
 * modifier that was down before: what character comes then says nothing of the layout.
 */
export function judge(step: CheckStep, heard: readonly HeardKey[]): StepResult {
  const { strokes, bounces, down } = readHeard(heard, sentTwice(step));
  const rightKeys = sameCodes(step.expects, strokes);
  const isClean = carriedIn(strokes).length === 0;
  const otherCharacters = rightKeys && isClean && !sameCharacters(step.expects, strokes);
  const isRight = rightKeys && isClean && !otherCharacters && bounces.length === 0 && down.size === 0;
  const isSilent = strokes.length === 0 && step.expects.length > 0 && down.size === 0;
  const verdict = isSilent ? 'silent' : isRight ? 'right' : 'wrong';
  return { step: step.id, verdict, strokes, otherCharacters, bounces, stuck: [...down.keys()] };
}

/** Whether as much has come as a right board sends and every key is up: the next step can be asked for. */
export function isSettled(step: CheckStep, heard: readonly HeardKey[]): boolean {
  const { strokes, down } = readHeard(heard, sentTwice(step));
  return down.size === 0 && strokes.length > 0 && strokes.length >= step.expects.length;
}

/**
 * Whether a step is asked for once more before its result counts: something else came, at the first try. A switch that
 * bounces or sticks counts at once: at the next try it may not, and what stays down sends nothing more.
 */
export function isAskedAgain({ verdict, bounces, stuck }: StepResult, isSecondTry: boolean): boolean {
  return verdict === 'wrong' && !isSecondTry && bounces.length === 0 && stuck.length === 0;
}

/** Codes that a right board sends more than once, modifiers included. */
function sentTwice({ expects }: CheckStep): ReadonlySet<string> {
  const codes = expects.flatMap(({ code, with: around }) => [...around, code]);
  return new Set(codes.filter((code, at) => codes.indexOf(code) !== at));
}

function sameCodes(expects: readonly ExpectedStroke[], strokes: readonly HeardStroke[]): boolean {
  return (
    expects.length === strokes.length &&
    expects.every(({ code, with: around }, at) => {
      const stroke = strokes[at];
      return stroke?.code === code && around.join() === stroke.with.join();
    })
  );
}

/** Whether the browser's names of the keys are those of the host layout; where it names none, nothing is held against it. */
function sameCharacters(expects: readonly ExpectedStroke[], strokes: readonly HeardStroke[]): boolean {
  return expects.every((each, at) => {
    const came = strokes[at]?.key ?? '';
    const key = keyFor(each, strokes[at]);
    return key === null || came === '' || came === 'Unidentified' || came === 'Process' || came === key;
  });
}

/** What a browser should have called a stroke, as Caps Lock was when it came. */
export function keyFor({ key, capsKey }: ExpectedStroke, came: HeardStroke | undefined): string | null {
  return came?.caps === true ? capsKey : key;
}

/**
 * Whether all is as expected but for modifiers that were down from before: those came too much, or did not come again
 * where they were to.
 */
export function isRightButForCarried({ expects }: CheckStep, strokes: readonly HeardStroke[]): boolean {
  if (carriedIn(strokes).length === 0 || expects.length !== strokes.length) return false;
  return expects.every(({ code, with: around }, at) => {
    const stroke = strokes[at];
    const missing = around.filter((one) => stroke?.with.includes(one) !== true);
    const isExtra = stroke?.with.some((one) => !around.includes(one)) === true;
    const covered = missing.every((one) => stroke?.carried?.some((state) => state === stateOf(one)));
    return stroke?.code === code && !isExtra && covered;
  });
}

/** Strokes as one text to compare by: codes and the modifiers around them. */
export function strokesText(
  strokes: readonly { readonly code: string; readonly with: readonly string[] }[],
): string {
  return strokes.map(({ code, with: around }) => [...around, code].join('+')).join(' ');
}
