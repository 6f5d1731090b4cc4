import type { ChoicePoint, SuggestedChoice } from '../../../core/typist/study.ts';
import { Button } from '../../widgets/button.tsx';
import { ChoiceCurve } from '../../widgets/choice-curve.tsx';
import { curveInWords, missesInWords, reasonInWords, surely } from '../accident-words.ts';
import styles from './cards.module.css';
import { TypistLine } from './typist-line.tsx';

/** The curve of a choice between misfires and misses, the suggested one with its reason, and what it all rests on. */
export function ChoiceCard({
  what,
  points,
  now,
  suggested,
  onTake,
}: {
  readonly what: 'chord' | 'hold';
  readonly points: readonly ChoicePoint[];
  /** The choice as it is, or as it is being slid to. */
  readonly now: ChoicePoint;
  readonly suggested: SuggestedChoice | null;
  readonly onTake: (ms: number) => void;
}) {
  const drawn = points.map(({ ms, misfires, misses }) => ({ x: ms, solid: misfires, dashed: misses }));
  return (
    <div className={styles.choiceCard}>
      <ChoiceCurve
        label={curveInWords(now, suggested)}
        points={drawn}
        now={{ x: now.ms, solid: now.misfires, dashed: now.misses }}
        suggested={
          suggested === null ? null : { x: suggested.point.ms, label: `suggested ${suggested.point.ms} ms` }
        }
        solid={{ label: 'misfires in 1,000 words', value: surely(now.misfires), least: 1 }}
        dashed={{ label: 'misses of uses', value: missesInWords(now.misses), least: 100 }}
        unit="ms"
      />
      {suggested !== null && (
        <p className={styles.reason}>
          {suggested.point.ms === Math.round(now.ms) ? (
            <strong>As suggested. </strong>
          ) : (
            <>
              <Button tone="quiet" onClick={() => onTake(suggested.point.ms)}>
                Take {suggested.point.ms} ms
              </Button>{' '}
            </>
          )}
          {reasonInWords(suggested, what)}
        </p>
      )}
      <TypistLine what={what} />
    </div>
  );
}
