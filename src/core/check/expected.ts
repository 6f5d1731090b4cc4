import type { OutputEvent } from '../engine/types.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { keyOfOutput } from '../host/key-of-output.ts';
import { type Code, isModifier, MODIFIERS, type Modifier } from '../keymap/codes.ts';
import { withoutLoneShifts } from './heard.ts';

/** One stroke that a right board sends, as a browser tells it. */
export interface ExpectedStroke {
  readonly code: Code;
  /** In the order of rule I6. */
  readonly with: readonly Modifier[];
  /** W3C `key` where the host layout makes a character or dead key of it; null where only the code counts. */
  readonly key: string | null;
  /** The same while Caps Lock is on. */
  readonly capsKey: string | null;
}

/** The strokes that an output comes to, as `readHeard` reads them: keys with the modifiers around them, and modifiers by themselves. */
export function expectedStrokes(output: readonly OutputEvent[], host: HostLayout): readonly ExpectedStroke[] {
  const down = new Set<Code>();
  const strokes: ExpectedStroke[] = [];
  let last: Code | null = null;
  const around = () => MODIFIERS.filter((modifier) => down.has(modifier));
  for (const { type, code } of output) {
    if (type === 'release') {
      const isAlone = down.delete(code) && isModifier(code) && last === code;
      if (isAlone) strokes.push({ code, with: around(), key: null, capsKey: null });
      if (isAlone) last = null;
      continue;
    }
    if (!isModifier(code)) strokes.push({ code, with: around(), ...keysUnder(host, code, around()) });
    down.add(code);
    last = code;
  }
  return withoutLoneShifts(strokes);
}

/** What a browser calls the key: its character or `Dead`; null with modifiers that make none, and for keys that go by their code. */
function keysUnder(
  host: HostLayout,
  code: Code,
  modifiers: readonly Modifier[],
): Pick<ExpectedStroke, 'key' | 'capsKey'> {
  const shift = modifiers.includes('ShiftLeft') || modifiers.includes('ShiftRight');
  const level3 = host.level3 !== null && modifiers.includes(host.level3);
  const others = modifiers.filter((one) => !/^Shift/.test(one) && one !== host.level3);
  if (others.length > 0) return { key: null, capsKey: null };
  const under = (caps: boolean) => keyOfOutput(host.outputOf(code, { shift, level3, caps }));
  return { key: under(false), capsKey: under(true) };
}
