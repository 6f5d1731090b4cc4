import type { CostlyNeed } from '../../../../core/coverage/costliest.ts';
import { needText } from '../../../../core/keymap/need.ts';
import { describeSteps } from '../../../../core/routes/describe.ts';
import { useAnalysis } from '../../../../store/analysis.ts';
import { useBench } from '../../../../store/bench.ts';
import { needLegend } from '../needs/need-rows.ts';
import { litByRoute } from '../route-lit.ts';
import styles from './coverage.module.css';
import { costlyWords } from './coverage-words.ts';

/** What is longer stands above its way, not beside it. */
const MOST_BESIDE = 4;

/** The needs that cost most; looking at one lights its route up on the board. */
export function CostlyList({
  needs,
  hasText,
}: {
  readonly needs: readonly CostlyNeed[];
  readonly hasText: boolean;
}) {
  const { keymap } = useAnalysis().facts;
  const light = useBench((bench) => bench.light);
  return (
    <ul className={styles.rows}>
      {needs.map((costly) => {
        const { glyph, name } = needLegend(costly.need);
        const look = () => light(litByRoute(costly.route, name));
        const away = () => light(null);
        return (
          <li key={needText(costly.need)}>
            <button
              type="button"
              className={styles.costly}
              data-costly={needText(costly.need)}
              data-long={glyph.length > MOST_BESIDE}
              onClick={look}
              onFocus={look}
              onBlur={away}
              onPointerEnter={look}
              onPointerLeave={away}
            >
              <span className={styles.glyph}>{glyph}</span>
              <span>
                {costlyWords(costly, hasText)}
                <span className={styles.quiet}>{describeSteps(keymap, costly.route).join(', ')}</span>
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
