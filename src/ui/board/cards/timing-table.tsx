import type { TimingChange } from '../../../core/keymap/edit.ts';
import { HOLD_RULES, PROTECTIONS, type RuleCell } from '../../../core/typist/hold-study.ts';
import { plainNumber, rateInWords } from '../../../core/typist/uncertainty.ts';
import { missesInWords, PROTECTION_WORDS, RULE_WORDS } from '../accident-words.ts';
import styles from './timing-table.module.css';

/** The three rules side by side, with and without each protection; each is one click to take. */
export function TimingTable({
  cells,
  onTake,
}: {
  readonly cells: readonly RuleCell[];
  readonly onTake: (timing: TimingChange) => void;
}) {
  return (
    <table className={styles.table}>
      <caption>Misfires in 1,000 words, and below misses in 1,000 uses; a press takes it.</caption>
      <thead>
        <tr>
          <td />
          {HOLD_RULES.map((rule) => (
            <th key={rule} scope="col">
              {RULE_WORDS[rule]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {PROTECTIONS.map((protection) => (
          <tr key={protection}>
            <th scope="row">{PROTECTION_WORDS[protection]}</th>
            {cells
              .filter((cell) => cell.protection === protection)
              .map((cell) => (
                <td key={cell.holdBy}>
                  <RuleButton cell={cell} onTake={onTake} />
                </td>
              ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function RuleButton({
  cell: {
    protection,
    misfires,
    misses,
    timing: { holdBy, quietBeforeMs, againWithinMs, sameHandTaps },
    inForce,
  },
  onTake,
}: {
  readonly cell: RuleCell;
  readonly onTake: (timing: TimingChange) => void;
}) {
  const name = `${RULE_WORDS[holdBy]}, ${PROTECTION_WORDS[protection]}`;
  return (
    <button
      type="button"
      className={styles.cell}
      aria-pressed={inForce}
      aria-label={`${name}: misfires ${rateInWords(misfires)} in 1,000 words, misses ${missesInWords(misses)}`}
      onClick={() => onTake({ holdBy, quietBeforeMs, againWithinMs, sameHandTaps })}
    >
      <span className={styles.misfires}>{misfires < 0.05 ? '0' : plainNumber(misfires)}</span>
      <span>{misses < 0.5 ? '0' : plainNumber(misses)}</span>
    </button>
  );
}
