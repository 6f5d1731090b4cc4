import { USUAL_LIMITS } from '../../../../core/findings/accident-limits.ts';
import { useTypist } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { NumberField } from '../../../widgets/number-field.tsx';
import styles from './accidents.module.css';

const FIELDS = [
  {
    field: 'chordPer1000Words',
    label: 'A chord misfires more than',
    unit: 'times in 1,000 words',
    max: 1000,
    step: 0.5,
  },
  {
    field: 'holdPer1000Words',
    label: 'A letter’s hold misfires more than',
    unit: 'times in 1,000 words',
    max: 1000,
    step: 0.5,
  },
  { field: 'missedPercent', label: 'A window misses more than', unit: '% of uses', max: 100, step: 1 },
  { field: 'delayMs', label: 'A letter waits on average more than', unit: 'ms', max: 1000, step: 5 },
  {
    field: 'frequentPer1000Words',
    label: '… if it is typed at least',
    unit: 'times in 1,000 words',
    max: 5000,
    step: 10,
  },
] as const;

/** From where on accidents are worth a finding. */
export function LimitFields() {
  const { limits, setLimits } = useTypist();
  const isUsual = FIELDS.every(({ field }) => limits[field] === USUAL_LIMITS[field]);
  return (
    <div className={styles.fields}>
      {FIELDS.map(({ field, ...rest }) => (
        <NumberField
          key={field}
          {...rest}
          min={0}
          value={limits[field]}
          onCommit={(value) => setLimits({ [field]: value })}
        />
      ))}
      {!isUsual && (
        <div>
          <Button onClick={() => setLimits(USUAL_LIMITS)}>As usual</Button>
        </div>
      )}
    </div>
  );
}
