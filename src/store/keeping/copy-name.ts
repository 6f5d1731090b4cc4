import { LIMITS } from '../../core/keymap/limits.ts';

/** The name of a copy that nothing else bears yet: ", copy", then ", copy 2" and so on, within the length of names. */
export function copyName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/, copy( \d+)?$/u, '');
  for (let number = 1; ; number++) {
    const tail = number === 1 ? ', copy' : `, copy ${number}`;
    const candidate = [...stem].slice(0, LIMITS.nameLength - tail.length).join('') + tail;
    if (!taken.includes(candidate)) return candidate;
  }
}
