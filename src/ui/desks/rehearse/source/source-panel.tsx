import { useState } from 'react';
import { Choice } from '../../../widgets/choice.tsx';
import styles from '../rehearse.module.css';
import { KeptIt } from './kept-it.tsx';
import { TypeIt } from './type-it.tsx';
import { WriteIt } from './write-it.tsx';

const WAYS = [
  { value: 'write', label: 'Write it' },
  { value: 'type', label: 'Type it' },
  { value: 'kept', label: 'Kept' },
] as const;

/** Where presses come from: a text, the user's own hands, or what was kept. */
export function SourcePanel({
  toType,
  onToType,
}: {
  readonly toType: string;
  readonly onToType: (text: string) => void;
}) {
  const [way, setWay] = useState<(typeof WAYS)[number]['value']>('write');
  return (
    <>
      <div className={styles.switch}>
        <Choice label="Where the presses come from" hideLabel value={way} options={WAYS} onChange={setWay} />
      </div>
      <div className={styles.panel}>
        {way === 'write' && <WriteIt />}
        {way === 'type' && <TypeIt toType={toType} onToType={onToType} />}
        {way === 'kept' && <KeptIt />}
      </div>
    </>
  );
}
