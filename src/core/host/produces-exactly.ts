import { type Code, isModifier } from '../keymap/codes.ts';
import type { ModifierName, Need } from '../keymap/need.ts';
import type { HostLayout } from './host-layout.ts';
import { createTypedReader, type Produced, type ReceivedEvent } from './typed.ts';

/** The name under which a shortcut knows a modifier of either side, undefined for any other key. */
export function modifierName(code: Code): ModifierName | undefined {
  if (!isModifier(code)) return undefined;
  if (code.startsWith('Control')) return 'Control';
  if (code.startsWith('Shift')) return 'Shift';
  return code.startsWith('Alt') ? 'Alt' : 'Meta';
}

/**
 * Whether these events give the need and nothing besides. A character: just that one, by one stroke or by dead keys.
 * A key: one press of it with no modifier down, whatever it types. A modifier: itself alone, once. A shortcut: one
 * press of its key with its modifiers down, of either side, and no other. Never a modifier tapped by itself, and
 * every key is up again at the end. That the board lifts a Shift for a stroke is no tap of Shift.
 */
export function producesExactly(host: HostLayout, events: readonly ReceivedEvent[], need: Need): boolean {
  const reader = createTypedReader(host);
  for (const event of events) reader.feed(event);
  if (reader.down().length > 0) return false;
  const produced = reader.produced();
  if (need.kind === 'char') return !reader.isPending() && isJustChar(produced, need.char);
  if (need.kind === 'key' && isModifier(need.code)) return isJustModifier(events, produced, need.code);
  if (produced.some((item) => item.kind === 'modifier')) return false;
  return isJustKey(events, need.code, need.kind === 'key' ? [] : need.modifiers);
}

function isJustChar(produced: readonly Produced[], char: string): boolean {
  const [only] = produced;
  return produced.length === 1 && only?.kind === 'char' && only.char === char;
}

function isJustModifier(
  events: readonly ReceivedEvent[],
  produced: readonly Produced[],
  code: Code,
): boolean {
  return produced.length === 1 && events.length === 2 && events.every((event) => event.code === code);
}

/** Whether the only press of a key that is no modifier is of this key, with exactly these modifiers down. */
function isJustKey(
  events: readonly ReceivedEvent[],
  code: Code,
  modifiers: readonly ModifierName[],
): boolean {
  const presses = events.filter((event) => event.type === 'press' && !isModifier(event.code));
  const [only] = presses;
  if (only === undefined || presses.length !== 1 || only.code !== code) return false;
  const names = new Set<ModifierName>();
  const down = new Set<Code>();
  for (const event of events.slice(0, events.indexOf(only))) {
    if (event.type === 'press') down.add(event.code);
    else down.delete(event.code);
  }
  for (const held of down) {
    const name = modifierName(held);
    if (name !== undefined) names.add(name);
  }
  return names.size === modifiers.length && modifiers.every((name) => names.has(name));
}
