import type { HostLayout } from '../../../../core/host/host-layout.ts';
import { CODES } from '../../../../core/keymap/codes.ts';
import type { RecordedKey } from '../../../../core/typist/fit-observe.ts';

const PLAIN = { shift: false, level3: false, caps: false };

/**
 * What stands on the keys of the keyboard at hand: what they have just typed, else what the design's first host has
 * there. Letters as capitals, as they stand on keys.
 */
export function legendsOf(host: HostLayout, typed: readonly RecordedKey[]): (code: string) => string {
  const seen = new Map(typed.flatMap(({ code, char }) => (char === null ? [] : [[code, char]])));
  return (code) => {
    const known = CODES.find((each) => each === code);
    const output = known === undefined ? null : host.outputOf(known, PLAIN);
    const char = seen.get(code) ?? (output?.kind === 'char' ? output.char : code.replace('Key', ''));
    const capital = char.toUpperCase();
    return [...capital].length === 1 ? capital : char;
  };
}
