import type { Edit } from '../keymap/edit.ts';
import type { ChordId, KeyId, LayerId } from '../keymap/types.ts';

/** The harm: broken does not work; risky works until it goes wrong; a note is worth knowing. */
export type Severity = 'broken' | 'risky' | 'note';

/** The parts a finding is about, the one at fault first in each list. */
export interface Subjects {
  readonly keys: readonly KeyId[];
  readonly layers: readonly LayerId[];
  readonly chords: readonly ChordId[];
}

/** A change that settles a finding: edits that are made and undone as one step. */
export interface Mend {
  readonly title: string;
  readonly edits: readonly Edit[];
}

/** One thing the validator has to say. Plain data: canvas, list, tests and command line read the same. */
export interface Finding {
  readonly rule: string;
  readonly messageId: string;
  readonly severity: Severity;
  readonly message: string;
  readonly subjects: Subjects;
  readonly data: Readonly<Record<string, string | number>>;
  readonly mends: readonly Mend[];
}
