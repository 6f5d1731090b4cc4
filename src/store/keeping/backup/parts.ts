import { indexedDbOrMemory, type KeyValue } from '../key-value.ts';
import { designsPart, versionsPart } from './designs-part.ts';
import { historiesPart } from './histories-part.ts';
import { localValues } from './local-values.ts';
import type { BackupPart } from './part.ts';

const kept = (database: string, store: string): KeyValue => indexedDbOrMemory({ database, store }).values;

/** Things that are kept by ids of their own: one that differs is kept beside the other. */
function things(id: string, title: string, values: KeyValue): BackupPart {
  return { id, title, values, meeting: { rule: 'both', renamed: (name, newId) => `${name}-${newId}` } };
}

/** Something of which there is one, or one for each design: where both differ, the typist says which stands. */
function one(id: string, title: string, values: KeyValue): BackupPart {
  return { id, title, values, meeting: { rule: 'choose' } };
}

/** Everything that a backup holds: whoever keeps something new adds it here. */
export function backupParts(): readonly BackupPart[] {
  return [
    designsPart(kept('handful', 'designs')),
    versionsPart(kept('handful versions', 'versions')),
    historiesPart(kept('handful histories', 'histories')),
    things('sessions', 'practice', kept('handful practice', 'sessions')),
    things('streams', 'recorded streams', kept('handful streams', 'streams')),
    {
      ...things('overlays', 'overlays for keyboards at hand', kept('handful overlays', 'overlays')),
      // Which of them was chosen last is kept beside them.
      holds: (name) => name !== 'chosen',
    },
    one('boards', 'unfinished work on boards', kept('handful boards', 'boards')),
    one('checks', 'checks of real boards', kept('handful check', 'checks')),
    one('own-text', 'the counts of your own text', kept('handful own text', 'counts')),
    one('measured', 'the measured typist', kept('handful measured typist', 'measured')),
    one('typist', 'speed and text of the typist', kept('handful typist', 'choices')),
    one('settings', 'settings of the page', localValues(['handful settings'])),
  ];
}
