import type { CompiledBinding, CompiledChord } from './compiled.ts';

/** Why a chord fired. spreadMs: from its first to its last down. */
export function chordReason(rule: string, chord: CompiledChord, spreadMs: number): string {
  const whole = `all ${chord.size} keys within ${spreadMs} ms, window ${chord.windowMs} ms`;
  switch (rule) {
    case 'G2':
      return `${whole}; the next key makes no larger chord`;
    case 'G4':
      return `${whole}; one of them came up`;
    case 'G6':
      return `${whole}; no larger chord came in time`;
    default:
      return whole;
  }
}

/** Why keys that waited are no chord. waitedMs: since the first of them went down. */
export function noChordReason(rule: string, keys: readonly string[], waitedMs: number): string {
  const waited = keys.join(' and ');
  switch (rule) {
    case 'G2':
      return `${waited} waited ${waitedMs} ms, and the next key makes no chord with them in time`;
    case 'G4':
      return `${waited} waited, and a key came up after ${waitedMs} ms`;
    default:
      return `${waited} waited ${waitedMs} ms, and no other key of a chord came`;
  }
}

/** Why an open key is a hold. other: the key or chord that decided it. */
export function holdReason(rule: string, binding: CompiledBinding, other: string): string {
  switch (rule) {
    case 'S5':
      return `${other} was pressed while it was down`;
    case 'S6':
      return `${other} was pressed and released while it was down`;
    case 'S14':
      return `${other} was pressed after it had been down alone for more than ${binding.holdAfterMs} ms`;
    default:
      return `down for more than ${binding.holdAfterMs} ms`;
  }
}

/** Why an open key is a tap. */
export function tapReason(
  rule: string,
  key: string,
  other: string,
  openedAt: number,
  binding: CompiledBinding,
): string {
  return rule === 'S4'
    ? `${other} of the same hand was pressed while ${key} was down`
    : `down at ${openedAt} and released within ${binding.holdAfterMs} ms`;
}

/** Why a press is a tap at once under S10. sinceMs: since the down before it. */
export function quietReason(sinceMs: number, binding: CompiledBinding): string {
  return `${sinceMs} ms after the press before it, quiet before ${binding.quietBeforeMs} ms`;
}

/** Why a press is a tap at once under S11. sinceMs: since the release of its own tap. */
export function againReason(sinceMs: number, binding: CompiledBinding): string {
  return `${sinceMs} ms after its own tap ended, again within ${binding.againWithinMs} ms`;
}

/** Why a latch went off. */
export function offReason(rule: string): string {
  switch (rule) {
    case 'L1':
      return 'pressed again before it was used';
    case 'L3':
      return 'its key came up after it was used';
    case 'L4':
      return 'the action that used it was released';
    default:
      return 'an action that types has used it';
  }
}
