import { useAccidents } from '../../../../store/accidents/use-accidents.ts';
import { useTypist } from '../../../../store/typist.ts';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { MeasureLine } from '../measure/measure-line.tsx';
import { SuggestButton } from '../suggest/suggest-panel.tsx';
import { AccidentList } from './accident-list.tsx';
import styles from './accidents.module.css';
import { LimitFields } from './limit-fields.tsx';
import { Protect } from './protect.tsx';
import { Simulate } from './simulate.tsx';
import { TypistFields } from './typist-fields.tsx';

/** How often ordinary typing sets something off on the open design, and what can be done about it. */
export function AccidentsPanel() {
  const { judged, isNow, failed } = useAccidents();
  const { typed } = useTypist();
  return (
    <div className={styles.panel} aria-busy={!isNow && typed.why === undefined && failed === null}>
      <TypistFields />
      <div className={styles.ways}>
        <MeasureLine />
        <SuggestButton />
      </div>
      {failed !== null && <p className={styles.problem}>{failed}</p>}
      {judged === null ? (
        failed === null && typed.why === undefined && <p className={styles.quiet}>Working it out…</p>
      ) : (
        <>
          <AccidentList overview={judged.overview} untypable={judged.untypable} />
          <Disclosure title="Suggest protections" startOpen>
            <Protect />
          </Disclosure>
          <Disclosure title="Simulate">
            <Simulate overview={judged.overview} />
          </Disclosure>
          <Disclosure title="From where on it is a finding">
            <LimitFields />
          </Disclosure>
        </>
      )}
      <p className={styles.quiet}>
        Estimates from typing on conventional keyboards.{' '}
        <a href="./typist.md" target="_blank" rel="noreferrer">
          What the figures are worth
        </a>
      </p>
    </div>
  );
}
