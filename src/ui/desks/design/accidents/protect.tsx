import { useMemo, useState } from 'react';
import type { LetterProtections } from '../../../../core/findings/letter-protections.ts';
import { protectionEdit } from '../../../../core/typist/protections.ts';
import { useProtections } from '../../../../store/accidents/use-accidents.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { Button } from '../../../widgets/button.tsx';
import { NumberField } from '../../../widgets/number-field.tsx';
import { protectionRows, protectionsInWords } from './accident-rows.ts';
import styles from './accidents.module.css';

/** The rate that is asked for at first, misfires of all hold/tap letters together in 1,000 words. Our choice. */
const USUAL = 5;
/** How many of 1,000 uses a hold may miss at first: many that count as misses come after a pause that the model does not know. Our choice. */
const USUAL_MISSES = 600;

/** The fewest changes that bring hold/tap letters under a rate that the user names, taken as one step. */
export function Protect() {
  const [isAsked, setIsAsked] = useState(false);
  const [most, setMost] = useState(USUAL);
  const [mostMisses, setMostMisses] = useState(USUAL_MISSES);
  const wish = useMemo(() => (isAsked ? { most, mostMisses } : null), [isAsked, most, mostMisses]);
  const protections = useProtections(wish);
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
      <NumberField
        label="A hold that is meant may miss"
        unit="of 1,000 uses"
        value={mostMisses}
        min={0}
        max={1000}
        step={50}
        onCommit={setMostMisses}
      />
      {!isAsked && (
        <div>
          <Button onClick={() => setIsAsked(true)}>Find the fewest changes</Button>
        </div>
      )}
      {isAsked && protections === null && <p className={styles.quiet}>Looking for the fewest changes…</p>}
      {protections !== null && <Suggested protections={protections} most={most} />}
    </div>
  );
}

function Suggested({
  protections,
  most,
}: {
  readonly protections: LetterProtections;
  readonly most: number;
}) {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const { host } = useHost(keymap);
  const many = protections.holds.length;
  return (
    <>
      <p role="status">{protectionsInWords(protections, most)}</p>
      <ul className={styles.changes}>
        {protectionRows(protections, { keymap, host }).map(({ name, words }) => (
          <li key={name}>
            {name}
            <span className={styles.quiet}>{words}</span>
          </li>
        ))}
      </ul>
      {many > 0 && (
        <div>
          <Button tone="accent" onClick={() => edit(protectionEdit(protections))}>
            {many === 1 ? 'Make this change' : `Make these changes on ${many} keys`}
          </Button>
        </div>
      )}
    </>
  );
}
