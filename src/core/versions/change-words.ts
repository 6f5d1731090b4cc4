import { samePlain } from '../base/same-plain.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { actionInWords, legendOf } from '../host/legend.ts';
import { type EffectiveTiming, timingOf } from '../keymap/timing.ts';
import type { Action, Binding, HoldBy, Keymap } from '../keymap/types.ts';

/** A design as it is put into words: on its host, null where that is not known. */
export interface Told {
  readonly keymap: Keymap;
  readonly host: HostLayout | null;
}

/** The earlier and the later design. */
export interface BothTold {
  readonly before: Told;
  readonly after: Told;
}

/** "( became {", "{ is new", "( is gone"; null where both are the same. */
export function became(before: string | null, after: string | null): string | null {
  if (before === after) return null;
  if (before === null) return `${after} is new`;
  return after === null ? `${before} is gone` : `${before} became ${after}`;
}

/** An action as briefly as it can be told apart: the sign that it types, else its full words. */
export function briefly(action: Action, told: Told): string {
  const legend = legendOf(action, told);
  return [...legend].length === 1 ? legend : actionInWords(action, told);
}

/** What became of a binding: its tap, its hold, its timing, each where it differs. */
export function bindingWords(
  before: Binding | null,
  after: Binding | null,
  { before: was, after: is }: BothTold,
): string {
  const told = { before: was, after: is };
  const tap = actionWords(before?.tap, after?.tap, told);
  const onShift = actionWords(before?.onShift, after?.onShift, told);
  const hold = actionWords(before?.hold, after?.hold, told);
  const timing =
    isTimed(before) && isTimed(after)
      ? timingWords(timingOf(was.keymap, before), timingOf(is.keymap, after))
      : [];
  return [
    ...(tap === null ? [] : [tap]),
    ...(onShift === null ? [] : [`under Shift: ${onShift}`]),
    ...(hold === null ? [] : [`hold: ${hold}`]),
    ...timing,
  ].join('; ');
}

/** What became of an action; one that looks the same but is another says so. Null where nothing did. */
export function actionWords(
  before: Action | undefined,
  after: Action | undefined,
  told: BothTold,
): string | null {
  if (samePlain(before, after)) return null;
  const was = before === undefined ? null : briefly(before, told.before);
  const is = after === undefined ? null : briefly(after, told.after);
  return became(was, is) ?? `${is} is made otherwise`;
}

function isTimed(binding: Binding | null): binding is Binding {
  return binding?.tap !== undefined && binding.hold !== undefined;
}

const HOLD_BY: Readonly<Record<HoldBy, string>> = {
  'time-only': 'time only',
  'press-inside': 'a press inside',
  'tap-inside': 'a tap inside',
};

/** The timing fields that differ: "hold after 200 ms became 180 ms". */
export function timingWords(before: EffectiveTiming, after: EffectiveTiming): readonly string[] {
  const ms = (name: string, was: number, is: number) =>
    was === is ? [] : [`${name} ${was} ms became ${is} ms`];
  return [
    ...ms('hold after', before.holdAfterMs, after.holdAfterMs),
    ...(before.holdBy === after.holdBy
      ? []
      : [`hold by ${HOLD_BY[before.holdBy]} became ${HOLD_BY[after.holdBy]}`]),
    ...ms('quiet before', before.quietBeforeMs, after.quietBeforeMs),
    ...ms('again within', before.againWithinMs, after.againWithinMs),
    ...(before.sameHandTaps === after.sameHandTaps
      ? []
      : [after.sameHandTaps ? 'same hand taps now' : 'same hand no longer taps']),
    ...(before.tapIfAlone === after.tapIfAlone
      ? []
      : [after.tapIfAlone ? 'alone it is a tap now' : 'alone it is no longer a tap']),
  ];
}
