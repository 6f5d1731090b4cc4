import type { ReadProblem } from '../../../core/keymap/problem.ts';
import styles from './problem-list.module.css';

/** More than this is not read by anybody; the first ones usually carry the rest with them. */
const SHOWN = 12;

/** What is wrong with a document: the place, what was found there, and what was expected. */
export function ProblemList({ problems }: { readonly problems: readonly ReadProblem[] }) {
  const rest = problems.length - SHOWN;
  return (
    <>
      <ol className={styles.problems}>
        {problems.slice(0, SHOWN).map((problem) => (
          <li key={`${problem.path} ${problem.sentence}`}>{problem.sentence}</li>
        ))}
      </ol>
      {rest > 0 && <p>And {rest} more.</p>}
    </>
  );
}
