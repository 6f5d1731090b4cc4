import { castDraft, produce } from 'immer';
import type { HostLayout, Stroke } from '../host/host-layout.ts';
import { createTypedReader } from '../host/typed.ts';
import type { Action, Keymap, ShiftedAction } from '../keymap/types.ts';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * The design as another computer meets it: the board sends the keys that type its characters on the host they were
 * chosen for, and `reader` makes of them what it does. One stroke becomes that key; several become the character that
 * comes of them, or an action that types nothing where it is not exactly one. Its routes under `reader` say which needs
 * hold there.
 */
export function sentKeys(keymap: Keymap, typedFor: HostLayout, reader: HostLayout): Keymap {
  const met = (action: Action) => castDraft(metBy(action, typedFor, reader));
  const shifted = (action: ShiftedAction) => castDraft(blankIfBoard(metBy(action, typedFor, reader)));
  return produce(keymap, (draft) => {
    for (const binding of draft.layers.flatMap(({ places }) => Object.values(places))) {
      if (binding.tap !== undefined) binding.tap = met(binding.tap);
      if (binding.hold !== undefined) binding.hold = met(binding.hold);
      if (binding.onShift !== undefined) binding.onShift = shifted(binding.onShift);
    }
    for (const chord of draft.chords ?? []) {
      chord.action = met(chord.action);
      if (chord.hold !== undefined) chord.hold = met(chord.hold);
      if (chord.onShift !== undefined) chord.onShift = shifted(chord.onShift);
    }
  });
}

/** Under Shift there is no function of the board; what types nothing is blank there. */
function blankIfBoard(action: Action): ShiftedAction {
  return action.do === 'key' || action.do === 'char' || action.do === 'text' ? action : { do: 'nothing' };
}

function metBy(action: Action, typedFor: HostLayout, reader: HostLayout): Action {
  if (action.do !== 'char' && action.do !== 'text') return action;
  const text = action.do === 'char' ? action.char : action.text;
  const strokes = [...graphemes.segment(text)].flatMap(
    ({ segment }) => typedFor.routesOf(segment.normalize('NFC'))[0] ?? [],
  );
  const [only, ...more] = strokes;
  if (only === undefined) return { do: 'board', label: 'types nothing' };
  if (more.length === 0) return { do: 'key', code: only.code, with: only.with };
  const char = charOf(strokes, reader);
  return char === undefined ? { do: 'board', label: 'types no single character' } : { do: 'char', char };
}

/** The character that strokes come to, if it is exactly one and no dead key waits at the end. */
function charOf(strokes: readonly Stroke[], host: HostLayout): string | undefined {
  const reader = createTypedReader(host);
  for (const { code, with: modifiers } of strokes) {
    const codes = [...modifiers, code];
    for (const one of codes) reader.feed({ type: 'press', code: one });
    for (const one of codes.toReversed()) reader.feed({ type: 'release', code: one });
  }
  const [first, ...more] = reader.produced();
  return more.length === 0 && first?.kind === 'char' && !reader.isPending() ? first.char : undefined;
}
