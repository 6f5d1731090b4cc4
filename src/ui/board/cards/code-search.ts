import { codeName } from '../../../core/host/code-names.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { codeInWords } from '../../../core/host/legend.ts';
import { CODES, type Code } from '../../../core/keymap/codes.ts';

/** A key that was found: its W3C code, and its name, with what it types where that differs. */
export interface FoundCode {
  readonly code: Code;
  readonly words: string;
}

/**
 * The keys whose names match a search, best first: what the key types, the start of its name, the start of a word in
 * it, anywhere in name or code. Of equals the shorter name, then the order of the code list. Nothing is searched: the
 * list itself.
 */
export function searchCodes(search: string, host: HostLayout | null, most: number): readonly FoundCode[] {
  const wanted = search.trim().toLowerCase();
  if (wanted === '') return CODES.slice(0, most).map((code) => ({ code, words: fullName(code, host) }));
  return CODES.map((code) => ({ code, rank: rankOf(code, wanted, host) }))
    .filter(({ rank }) => rank < NOT_FOUND)
    .sort((one, other) => one.rank - other.rank || codeName(one.code).length - codeName(other.code).length)
    .slice(0, most)
    .map(({ code }) => ({ code, words: fullName(code, host) }));
}

const NOT_FOUND = 4;

function rankOf(code: Code, wanted: string, host: HostLayout | null): number {
  const name = codeName(code).toLowerCase();
  if (codeInWords(code, host).toLowerCase() === wanted || name === wanted) return 0;
  if (name.startsWith(wanted)) return 1;
  if (name.split(' ').some((word) => word.startsWith(wanted))) return 2;
  return name.includes(wanted) || code.toLowerCase().includes(wanted) ? 3 : NOT_FOUND;
}

function fullName(code: Code, host: HostLayout | null): string {
  const typed = codeInWords(code, host);
  const name = codeName(code);
  return typed === name ? name : `${typed} (${name} on US)`;
}
