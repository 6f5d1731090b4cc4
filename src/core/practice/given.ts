import type { HostLayout } from '../host/host-layout.ts';
import { modifierName } from '../host/produces-exactly.ts';
import { createTypedReader, type ReceivedEvent } from '../host/typed.ts';
import { type Code, isModifier } from '../keymap/codes.ts';
import type { ModifierName, Need } from '../keymap/need.ts';

/** One thing that the computer was given: a key with the modifiers around it, and the character that it came to. */
export interface Given {
  readonly code: Code;
  readonly modifiers: readonly ModifierName[];
  /** What was typed; null for a key that types nothing here, or one that still waits for its letter. */
  readonly char: string | null;
  /** A dead key that waits for what comes next. */
  readonly waits: boolean;
  /** A modifier that went down and up with nothing between. */
  readonly alone: boolean;
}

/** Reads what a computer receives, event by event; hands back what an event gave, null for most of them. */
export interface GivenReader {
  feed(event: ReceivedEvent): Given | null;
  /** Modifiers that are down now, by their codes. */
  modifiers(): readonly Code[];
}

/** A reader with nothing down. */
export function createGivenReader(host: HostLayout): GivenReader {
  const reader = createTypedReader(host);
  const modifiers = () => reader.down().filter(isModifier);
  return {
    modifiers,
    feed(event) {
      const names = namesOf(modifiers());
      const before = reader.produced().length;
      reader.feed(event);
      const last = reader.produced().length > before ? reader.produced().at(-1) : undefined;
      if (event.type === 'release') {
        if (last?.kind !== 'modifier') return null;
        return { code: event.code, modifiers: [], char: null, waits: false, alone: true };
      }
      if (isModifier(event.code)) return null;
      const char = last?.kind === 'char' ? last.char : null;
      const waits = last === undefined && reader.isPending();
      return { code: event.code, modifiers: names, char, waits, alone: false };
    },
  };
}

function namesOf(codes: readonly Code[]): readonly ModifierName[] {
  const names = codes.map(modifierName).filter((name) => name !== undefined);
  return [...new Set(names)];
}

/**
 * Whether what was given is the need. On its way are a dead key where a character is wanted, and a modifier tapped by
 * itself where none is: neither is right or wrong yet.
 */
export function judged(need: Need, given: Given): 'right' | 'wrong' | 'on-the-way' {
  if (given.alone) {
    if (need.kind !== 'key' || !isModifier(need.code)) return 'on-the-way';
    return given.code === need.code ? 'right' : 'wrong';
  }
  if (need.kind === 'char') {
    if (given.waits) return 'on-the-way';
    return given.char === need.char ? 'right' : 'wrong';
  }
  const wanted = need.kind === 'shortcut' ? need.modifiers : [];
  const same =
    wanted.length === given.modifiers.length && wanted.every((name) => given.modifiers.includes(name));
  return same && given.code === need.code ? 'right' : 'wrong';
}

/**
 * The places, in what was given, of what was wrong. A Backspace after something wrong is a habit and no mistake: nothing has
 * to be taken back here.
 */
export function wrongPlaces(need: Need, given: readonly Given[]): readonly number[] {
  const places: number[] = [];
  for (const [at, each] of given.entries()) {
    const isTakingBack = places.length > 0 && each.code === 'Backspace';
    if (!isTakingBack && judged(need, each) === 'wrong') places.push(at);
  }
  return places;
}
