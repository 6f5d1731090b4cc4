import { useState } from 'react';
import { protectionEdit } from '../../../../core/typist/protections.ts';
import { useProtections } from '../../../../store/accidents/use-accidents.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { Button } from '../../../widgets/button.tsx';
import { NumberField } from '../../../widgets/number-field.tsx';
import { protectionInWords, protectionsInWords } from './accident-rows.ts';
import styles from './accidents.module.css';

/** The rate that is asked for at first, misfires of all hold/tap letters together in 1,000 words. Our choice. */
const USUAL = 2;

/** The fewest changes that bring hold/tap letters under a rate that the user names, taken as one step. */
export function Protect() {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const { host } = useHost(keymap);
  const [most, setMost] = useState(USUAL);
  const protections = useProtections(most);
  const rows = protections?.holds.map((hold) => protectionInWords(hold, { keymap, host })) ?? [];
  return (
    <div className={styles.section}>
      <NumberField
        label="Hold/tap letters may misfire, all together"
        unit="times in 1,000 words"
        value={most}
        min={0}
        max={1000}
        step={1}
        onCommit={setMost}
      />
      {protections === null ? (
        <p className={styles.quiet}>Looking for the fewest changes…</p>
      ) : (
        <>
          <p role="status">{protectionsInWords(protections, most)}</p>
          <ul className={styles.changes}>
            {rows.map(({ name, words }) => (
              <li key={name}>
                {name}
                <span className={styles.quiet}>{words}</span>
              </li>
            ))}
          </ul>
          {rows.length > 0 && (
            <div>
              <Button onClick={() => edit(protectionEdit(protections))}>
                {rows.length === 1 ? 'Make this change' : `Make these changes on ${rows.length} keys`}
              </Button>
            </div>
          )}
        </>
      )}
    </div>
  );
}
