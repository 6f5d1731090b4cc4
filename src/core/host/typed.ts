import { type Code, isModifier, type Modifier } from '../keymap/codes.ts';
import type { HostLayout, HostOutput } from './host-layout.ts';

/** What the computer receives, as far as reading it needs to know. */
export interface ReceivedEvent {
  readonly type: 'press' | 'release';
  readonly code: Code;
  /** The board lifts a Shift for a stroke, or presses it again after that: it is no tap of Shift. */
  readonly lifting?: true | undefined;
}

/** What presses come to: a character, a key that types nothing or is a shortcut, or a modifier tapped by itself. */
export type Produced =
  | { readonly kind: 'char'; readonly char: string; readonly code: Code }
  | { readonly kind: 'key'; readonly code: Code; readonly modifiers: readonly Modifier[] }
  | { readonly kind: 'modifier'; readonly code: Modifier };

/** Reads presses and releases one after another, as a computer with this host layout would. */
export interface TypedReader {
  feed(event: ReceivedEvent): void;
  /** Characters typed so far; Enter is "\n", Tab is "\t". */
  text(): string;
  /** Everything produced so far, in order. A modifier counts when it comes up again with no other press between. */
  produced(): readonly Produced[];
  /** Whether a dead key still waits for its letter. */
  isPending(): boolean;
  /** Modifiers and other keys that are down now, in the order in which they went down. */
  down(): readonly Code[];
}

const KEYS_WITH_CHARACTERS: Partial<Readonly<Record<Code, string>>> = {
  Enter: '\n',
  NumpadEnter: '\n',
  Tab: '\t',
};

/** The dead keys pressed and not yet composed, at most two, with the modifiers that were down at each. */
type Pending = readonly {
  readonly dead: string;
  readonly code: Code;
  readonly modifiers: readonly Modifier[];
}[];

/** A reader with no key down, Caps Lock off and no dead key waiting. A sequence that composes to nothing types nothing, as under XKB. */
export function createTypedReader(host: HostLayout): TypedReader {
  const down = new Set<Code>();
  const produced: Produced[] = [];
  let caps = false;
  let lastPress: Code | undefined;
  let pending: Pending = [];

  const modifiersDown = () => [...down].filter(isModifier);

  function giveKey(code: Code, modifiers: readonly Modifier[]): void {
    for (const lost of pending) produced.push({ kind: 'key', code: lost.code, modifiers: lost.modifiers });
    pending = [];
    produced.push({ kind: 'key', code, modifiers });
  }

  function giveChar(char: string, code: Code): void {
    pending = [];
    produced.push({ kind: 'char', char, code });
  }

  function pressDead(dead: string, code: Code, modifiers: readonly Modifier[]): void {
    const composed = pending.length > 0 ? host.compose(namesOf(pending), dead) : undefined;
    if (composed !== undefined) giveChar(composed, code);
    else if (pending.length < 2) pending = [...pending, { dead, code, modifiers }];
    else giveKey(code, modifiers);
  }

  function pressKey(code: Code): void {
    const modifiers = modifiersDown();
    const output = readKey(host, code, modifiers, caps);
    if (output.kind === 'dead') {
      pressDead(output.dead, code, modifiers);
      return;
    }
    const typed = output.kind === 'char' ? output.char : undefined;
    const char = typed !== undefined && pending.length > 0 ? host.compose(namesOf(pending), typed) : typed;
    if (char === undefined) giveKey(code, modifiers);
    else giveChar(char, code);
  }

  /** Caps Lock is no letter to a dead key, which goes on waiting. */
  function toggleCaps(): void {
    caps = !caps;
    produced.push({ kind: 'key', code: 'CapsLock', modifiers: modifiersDown() });
  }

  function press({ code, lifting }: ReceivedEvent): void {
    if (code === 'CapsLock') toggleCaps();
    else if (!isModifier(code)) pressKey(code);
    down.add(code);
    if (!lifting) lastPress = code;
  }

  function release({ code, lifting }: ReceivedEvent): void {
    if (down.delete(code) && isModifier(code) && lastPress === code && !lifting) {
      produced.push({ kind: 'modifier', code });
      lastPress = undefined;
    }
  }

  return {
    feed: (event) => (event.type === 'press' ? press(event) : release(event)),
    text: () => produced.map((item) => (item.kind === 'char' ? item.char : '')).join(''),
    produced: () => produced,
    isPending: () => pending.length > 0,
    down: () => [...down],
  };
}

function namesOf(pending: Pending): readonly string[] {
  return pending.map(({ dead }) => dead);
}

/** What a key gives with these modifiers down: nothing while Control, Meta or an Alt that is not level 3 is among them. */
function readKey(host: HostLayout, code: Code, modifiers: readonly Modifier[], caps: boolean): HostOutput {
  const shift = modifiers.some((modifier) => modifier === 'ShiftLeft' || modifier === 'ShiftRight');
  const level3 = host.level3 !== null && modifiers.includes(host.level3);
  const others = modifiers.filter(
    (modifier) => modifier !== 'ShiftLeft' && modifier !== 'ShiftRight' && modifier !== host.level3,
  );
  if (others.length > 0) return { kind: 'none' };
  const char = KEYS_WITH_CHARACTERS[code];
  // Shift+Tab goes back and types nothing; Shift+Enter is still Enter.
  if (char !== undefined) return shift && char === '\t' ? { kind: 'none' } : { kind: 'char', char };
  return host.outputOf(code, { shift, level3, caps });
}

/** The text that a computer with this host layout shows after these events. */
export function typedText(events: readonly ReceivedEvent[], host: HostLayout): string {
  const reader = createTypedReader(host);
  for (const event of events) reader.feed(event);
  return reader.text();
}
