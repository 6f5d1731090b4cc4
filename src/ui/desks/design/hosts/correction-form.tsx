import { type FormEvent, useState } from 'react';
import { codeName } from '../../../../core/host/code-names.ts';
import { DEAD_KEYS } from '../../../../core/host/compose.ts';
import { tableGives } from '../../../../core/host/corrected-host.ts';
import type { HostTable } from '../../../../core/host/host-table.ts';
import { TYPING_CODES } from '../../../../core/host/typing-codes.ts';
import type { Code } from '../../../../core/keymap/codes.ts';
import { isOneCharacter } from '../../../../core/keymap/need.ts';
import type { Correction, Host } from '../../../../core/keymap/types.ts';
import { Button } from '../../../widgets/button.tsx';
import { Select } from '../../../widgets/select.tsx';
import { TextField } from '../../../widgets/text-field.tsx';
import { givesWords, levelWords } from './host-words.ts';
import styles from './hosts.module.css';

const LEVELS: readonly Correction['level'][] = ['plain', 'shift', 'level3', 'shift-level3'];

/** In place of a dead key's name: what is typed into the field; nothing at all. */
const KINDS = [
  { value: 'char', label: 'a character' },
  { value: '', label: 'nothing' },
];

/** Chooses a key and a level, and says what the computer really gives there. */
export function CorrectionForm({
  table,
  system,
  onCorrect,
}: {
  readonly table: HostTable;
  readonly system: Host['system'];
  readonly onCorrect: (correction: Correction) => void;
}) {
  const [code, setCode] = useState<Code>('KeyA');
  const [level, setLevel] = useState<Correction['level']>('plain');
  const [kind, setKind] = useState('char');
  const [char, setChar] = useState('');
  const [problem, setProblem] = useState<string | undefined>();
  const says = `The table says: ${givesWords(tableGives(table, code, level))}`;
  const correct = (event: FormEvent) => {
    event.preventDefault();
    const gives = kind === 'char' ? char.normalize('NFC') : kind;
    const isReady = kind !== 'char' || isOneCharacter(gives);
    setProblem(isReady ? undefined : 'Type one character.');
    if (!isReady) return;
    onCorrect({ code, level, gives });
    setChar('');
  };
  return (
    <form className={styles.form} onSubmit={correct}>
      <Select label="Key" value={code} options={keyOptions(table)} onChange={setCode} />
      <Select
        label="Pressed"
        value={level}
        options={LEVELS.map((value) => ({ value, label: levelWords(value, system) }))}
        onChange={setLevel}
      />
      <Select label="Gives" value={kind} options={kindOptions(table)} onChange={setKind} />
      {kind === 'char' && (
        <TextField
          label="Character"
          value={char}
          onChange={setChar}
          error={problem}
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
        />
      )}
      <Button type="submit">Correct</Button>
      <p className={styles.says} role="status">
        {says}
      </p>
    </form>
  );
}

/** Keys by their place on `us`, with what the layout has there where it is something else. */
function keyOptions(table: HostTable): { value: Code; label: string }[] {
  return TYPING_CODES.map((code) => {
    const name = codeName(code);
    const gives = tableGives(table, code, 'plain');
    const isOther = /^[A-Z]$/.test(name) && gives !== '' && gives.toUpperCase() !== name;
    return { value: code, label: isOther ? `${name}, here ${givesWords(gives)}` : name };
  });
}

/** The layout's own dead keys first, then those that Unicode composes. */
function kindOptions(table: HostTable): { value: string; label: string; group?: string }[] {
  const own = Object.keys(table.compose).filter((name) => !name.includes(' '));
  const dead = [...new Set([...own, ...DEAD_KEYS])];
  return [...KINDS, ...dead.map((name) => ({ value: name, label: givesWords(name), group: 'A dead key' }))];
}
