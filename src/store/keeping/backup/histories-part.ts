import { checkKeymap } from '../../../core/keymap/read.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import type { History } from '../../history.ts';
import { readHistory } from '../histories.ts';
import type { KeyValue } from '../key-value.ts';
import { packed, unpacked } from './packed.ts';
import type { BackupPart } from './part.ts';

/**
 * How many steps of a design in either direction a backup holds. Each is a whole design that is read as strictly as a
 * file when it comes back, which takes some milliseconds.
 */
export const BACKUP_STEPS = 50;

/** The steps that can be undone and redone. A history that is here already stays: its steps lead to the design as it is here. */
export function historiesPart(values: KeyValue): BackupPart {
  return {
    id: 'histories',
    title: 'steps that can be undone',
    values: {
      ...values,
      get: async (name) => {
        const history = readHistory(await values.get(name));
        return history === null ? undefined : packed(shortened(history));
      },
      set: async (name, value) => {
        const history = strictHistory(value);
        if (history !== null) await values.set(name, history);
      },
    },
    isValid: (value) => strictHistory(value) !== null,
    meeting: { rule: 'here' },
    isSpared: true,
  };
}

function shortened({ keymap, past, future }: History): History {
  return { keymap, past: past.slice(-BACKUP_STEPS), future: future.slice(0, BACKUP_STEPS) };
}

/** A history from a file; null where it is none, has too many steps, or one of its keymaps cannot be read. */
function strictHistory(value: unknown): History | null {
  const history = historyIn(value);
  if (history === null || Math.max(history.past.length, history.future.length) > BACKUP_STEPS) return null;
  const keymap = strictKeymap(history.keymap);
  const past = strictSteps(history.past);
  const future = strictSteps(history.future);
  return keymap === null || past === null || future === null ? null : { keymap, past, future };
}

function historyIn(value: unknown): History | null {
  try {
    return readHistory(unpacked(value));
  } catch {
    return null;
  }
}

function strictSteps(steps: History['past']): History['past'] | null {
  const read = steps.flatMap(({ title, keymap, became }) => {
    const strict = strictKeymap(keymap);
    return strict === null ? [] : [{ title, keymap: strict, ...(isRenaming(became) && { became }) }];
  });
  return read.length === steps.length ? read : null;
}

function strictKeymap(keymap: Keymap): Keymap | null {
  const read = checkKeymap(keymap);
  return read.ok ? read.value : null;
}

function isRenaming(became: unknown): boolean {
  if (typeof became !== 'object' || became === null) return false;
  const ids = Object.values(became);
  return ids.every((id) => typeof id === 'string') && new Set(ids).size === ids.length;
}
