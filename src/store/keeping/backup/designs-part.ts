import { checkKeymap } from '../../../core/keymap/read.ts';
import { readVersions, withVersion } from '../../versions/version.ts';
import { copyName } from '../copy-name.ts';
import type { KeyValue } from '../key-value.ts';
import type { BackupPart } from './part.ts';

const DESIGN = 'design:';

/** The kept designs: one that differs from the one kept here under the same id is added under a name of its own. */
export function designsPart(values: KeyValue): BackupPart {
  return {
    id: 'designs',
    title: 'designs',
    values,
    holds: (name) => name.startsWith(DESIGN),
    isValid: (value) => isRecord(value) && checkKeymap(value.keymap).ok,
    nameOf: (value) => nameOf(value),
    meeting: {
      rule: 'both',
      renamed: (_, newId) => `${DESIGN}${newId}`,
      copied: (value, taken) => {
        const read = isRecord(value) ? checkKeymap(value.keymap) : null;
        if (!isRecord(value) || read?.ok !== true) return value;
        return { ...value, keymap: { ...read.value, name: copyName(read.value.name, taken) } };
      },
    },
  };
}

/** The versions of designs: those of both, by their ids. */
export function versionsPart(values: KeyValue): BackupPart {
  return {
    id: 'versions',
    title: 'versions of designs',
    values,
    isValid: Array.isArray,
    meeting: {
      rule: 'union',
      combine: (here, backup) =>
        readVersions(backup)
          .toReversed()
          .reduce((versions, version) => withVersion(versions, version), readVersions(here)),
    },
  };
}

function isRecord(value: unknown): value is { readonly keymap: unknown; readonly changedAt: number } {
  return (
    typeof value === 'object' &&
    value !== null &&
    'keymap' in value &&
    'changedAt' in value &&
    typeof value.changedAt === 'number'
  );
}

function nameOf(value: unknown): string {
  if (!isRecord(value) || typeof value.keymap !== 'object' || value.keymap === null) return '';
  return 'name' in value.keymap && typeof value.keymap.name === 'string' ? value.keymap.name : '';
}
