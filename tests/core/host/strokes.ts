import type { Stroke } from '../../../src/core/host/host-layout.ts';
import type { ReceivedEvent } from '../../../src/core/host/typed.ts';
import { isCode } from '../../../src/core/keymap/codes.ts';

/** A route as one line: "AltRight+KeyU KeyU". */
export function routeLine(route: readonly Stroke[]): string {
  return route.map((stroke) => [...stroke.with, stroke.code].join('+')).join(' ');
}

/** The events of a route: each stroke presses its modifiers and its key, and lets go of them in reverse. */
export function eventsOf(route: readonly Stroke[]): readonly ReceivedEvent[] {
  return route.flatMap((stroke) => {
    const codes = [...stroke.with, stroke.code];
    const presses = codes.map((code) => ({ type: 'press', code }) as const);
    return [...presses, ...presses.toReversed().map(({ code }) => ({ type: 'release', code }) as const)];
  });
}

/** Events from a line of words: `+KeyA` presses, `-KeyA` releases, `KeyA` does both. */
export function events(line: string): readonly ReceivedEvent[] {
  return line
    .split(' ')
    .filter((word) => word !== '')
    .flatMap((word) => {
      const code = word.replace(/^[+-]/, '');
      if (!isCode(code)) throw new Error(`${word} is no code`);
      const press = { type: 'press', code } as const;
      const release = { type: 'release', code } as const;
      return word.startsWith('+') ? [press] : word.startsWith('-') ? [release] : [press, release];
    });
}
