import { useState } from 'react';
import type { Overview } from '../../../../core/typist/overview.ts';
import { useSimulation } from '../../../../store/accidents/simulation.ts';
import { useTypedDesign } from '../../../../store/accidents/use-accidents.ts';
import { useHost } from '../../../../store/hosts.ts';
import { Button } from '../../../widgets/button.tsx';
import { NumberField } from '../../../widgets/number-field.tsx';
import { Select } from '../../../widgets/select.tsx';
import styles from './accidents.module.css';
import {
  outsideInWords,
  type SimulatedTable,
  simulatedTables,
  simulationInWords,
} from './simulation-words.ts';

const WORDS = [
  { value: '10000', label: '10,000 words' },
  { value: '100000', label: '100,000 words' },
  { value: '1000000', label: '1,000,000 words' },
] as const;
/** Uses of each chord and hold that are made besides, for their misses. */
const USES_EACH = 400;

/** Types the text on the design as sampled typists would, through the engine itself, and holds the estimates against it. */
export function Simulate({ overview }: { readonly overview: Overview }) {
  const design = useTypedDesign();
  const { running, last, failed, run, cancel } = useSimulation();
  const [words, setWords] = useState<(typeof WORDS)[number]['value']>('100000');
  const [seed, setSeed] = useState(1);
  const start = () => {
    if (design === null) return;
    const { keymap, table, counts, person } = design;
    void run({ keymap, table, counts, person, budget: { words: Number(words), seed, usesEach: USES_EACH } });
  };
  const isOfThis = last !== null && design !== null && isOf(last.of, design);
  return (
    <div className={styles.section}>
      <div className={styles.pair}>
        <Select label="Type" value={words} options={WORDS} onChange={setWords} />
        <NumberField label="Seed" value={seed} min={0} max={999_999} step={1} onCommit={setSeed} />
      </div>
      {running === null ? (
        <div>
          <Button onClick={start} disabled={design === null}>
            Simulate
          </Button>
        </div>
      ) : (
        <div className={styles.running}>
          <progress value={running.done} max={running.words} aria-label="Words typed" />
          <Button onClick={cancel}>Cancel</Button>
        </div>
      )}
      {failed !== null && <p className={styles.problem}>{failed}</p>}
      {last !== null &&
        (isOfThis ? (
          <Simulated last={last} overview={overview} />
        ) : (
          <p className={styles.quiet}>The last simulation was of another design, typist or text.</p>
        ))}
    </div>
  );
}

type Last = NonNullable<ReturnType<typeof useSimulation>['last']>;

/** Whether a simulation was of the design as it is typed now. */
function isOf(request: Last['of'], design: NonNullable<ReturnType<typeof useTypedDesign>>): boolean {
  return (
    request.keymap === design.keymap &&
    request.table === design.table &&
    request.counts === design.counts &&
    request.person === design.person
  );
}

function Simulated({ last: { of, result }, overview }: { readonly last: Last; readonly overview: Overview }) {
  const { host } = useHost(of.keymap);
  const tables = simulatedTables(result, overview, { keymap: of.keymap, host });
  return (
    <>
      <p role="status">{outsideInWords(tables)}</p>
      <p className={styles.quiet}>{simulationInWords(result)}</p>
      {tables.map((table) => (
        <Beside key={table.of} table={table} />
      ))}
    </>
  );
}

/** Estimate and simulation side by side. */
function Beside({ table: { of, heading, rows } }: { readonly table: SimulatedTable }) {
  return (
    <table className={styles.table} data-simulated={of} aria-label={heading}>
      <thead>
        <tr>
          <th scope="col">{heading}</th>
          <th scope="col">Estimate</th>
          <th scope="col">Simulated</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, name, estimate, simulated, isOutside }) => (
          <tr key={id} data-outside={isOutside}>
            <th scope="row">{name}</th>
            <td>{isOutside ? `${estimate}, outside` : estimate}</td>
            <td>{simulated}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
