import { isModifier, type Modifier } from '../../keymap/codes.ts';
import type { ModifierName } from '../../keymap/need.ts';
import type { Action } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Severity } from '../find.ts';
import { canStayDown, chordCanStayDown } from '../held-side.ts';
import { bindHeld, holdPlace } from '../hold-place.ts';
import { finding, type Rule } from '../rule.ts';

const id = 'modifier-missing';

/** Looks for each of the four modifiers, either side's, on what can be pressed; `with` of a key does not serve. */
export const modifierMissing: Rule = {
  id,
  title: 'Modifier or Shift missing',
  why: 'Without it no capital, or no shortcut that is not bound by itself, can be typed.',
  check(facts) {
    const present = modifiersInReach(facts);
    return (['Shift', 'Control', 'Alt', 'Meta'] as const).flatMap((name) =>
      present.has(`${name}Left`) || present.has(`${name}Right`) ? [] : [found(facts, name)],
    );
  },
};

/** A modifier that is up again as soon as it is pressed goes with nothing, so it does not count. */
function modifiersInReach({ keymap, places, chords, reach }: Facts): ReadonlySet<Modifier> {
  const present = new Set<Modifier>();
  const add = (action: Action): void => {
    if (action.do === 'modifier') present.add(action.code);
    else if (action.do === 'key' && isModifier(action.code)) present.add(action.code);
  };
  for (const { binding, sides, reached } of places) {
    if (!reached) continue;
    for (const { side, action } of sides) {
      if (action.do === 'modifier' || canStayDown(keymap, binding, side)) add(action);
    }
  }
  for (const { chord, order } of chords) {
    if (reach.fires[order] !== true) continue;
    if (chord.action.do === 'modifier' || chordCanStayDown(keymap, chord)) add(chord.action);
    if (chord.hold !== undefined) add(chord.hold);
  }
  return present;
}

function found(facts: Facts, name: ModifierName): Finding {
  const code: Modifier = `${name}Left`;
  const place = holdPlace(facts, () => true, true);
  return finding({
    rule: id,
    messageId: 'no-key',
    severity: severityOf(facts, name),
    message: messageOf(name),
    data: { modifier: name, need: `key:${code}` },
    mends: place === null ? [] : [bindHeld(facts, place, { do: 'key', code }, name)],
  });
}

/** Meta carries the common shortcuts on macOS; elsewhere many do without it, as without Alt. */
function severityOf({ keymap }: Facts, name: ModifierName): Severity {
  if (name === 'Shift' || name === 'Control') return 'risky';
  return name === 'Meta' && keymap.hosts[0]?.system === 'macos' ? 'risky' : 'note';
}

function messageOf(name: ModifierName): string {
  if (name === 'Shift')
    return 'Shift is missing: no key that can be pressed gives it, so capitals need keys of their own.';
  return `${name} is missing: no key that can be pressed gives it, so shortcuts with it need keys of their own.`;
}
