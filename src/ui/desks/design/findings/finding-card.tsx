import { memo, useContext } from 'react';
import { samePlain } from '../../../../core/base/same-plain.ts';
import type { Finding, Severity } from '../../../../core/findings/find.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { layerOfFinding, litByFinding } from '../route-lit.ts';
import styles from './findings.module.css';
import { TakeMend } from './take-mend.ts';

const SIGNS: Readonly<Record<Severity, string>> = { broken: '■', risky: '▲', note: '●' };

interface FindingCardProps {
  readonly finding: Finding;
}

/**
 * One finding: what is wrong in a sentence, where it is, and what would settle it. An edit finds all of them anew, but
 * only those that say something else are drawn again.
 */
export const FindingCard = memo(FindingCardOf, (before: FindingCardProps, now: FindingCardProps) =>
  samePlain(before.finding, now.finding),
);

function FindingCardOf({ finding }: FindingCardProps) {
  const take = useContext(TakeMend);
  const shown = useBench((bench) => bench.lit?.why === finding.message);
  const { keys, layers, chords } = finding.subjects;
  const somewhere = keys.length + chords.length + layers.length > 0;
  const show = () => {
    const { keymap, light, showLayer } = useBench.getState();
    if (shown) return light(null);
    const layer = layerOfFinding(finding, keymap);
    if (layer !== null) showLayer(layer);
    light(litByFinding(finding, keymap));
  };
  return (
    <li
      className={styles.card}
      data-card
      tabIndex={-1}
      data-severity={finding.severity}
      data-rule={finding.rule}
    >
      <span className={styles.sign} aria-hidden="true">
        {SIGNS[finding.severity]}
      </span>
      <div className={styles.words}>
        <p>{finding.message}</p>
        <div className={styles.buttons}>
          {somewhere && (
            <Button tone="quiet" aria-pressed={shown} onClick={show}>
              Show
            </Button>
          )}
          {finding.mends.map((mend) => (
            <Button key={mend.title} onClick={() => take(mend)}>
              {mend.title}
            </Button>
          ))}
        </div>
      </div>
    </li>
  );
}
