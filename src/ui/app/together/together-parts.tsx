import { useId } from 'react';
import type { Choice as Side } from '../../../core/versions/merge.ts';
import { Choice } from '../../widgets/choice.tsx';
import styles from './together.module.css';
import type { Plan } from './together.ts';

/** How many changes are shown before the rest is counted. */
const SHOWN = 12;

/** What one of the two changed since both were the same. */
export function Changed({ title, words }: { readonly title: string; readonly words: readonly string[] }) {
  const heading = useId();
  return (
    <section aria-labelledby={heading} className={styles.changed}>
      <h3 id={heading}>{title}</h3>
      {words.length === 0 && <p className={styles.quiet}>nothing</p>}
      <ul>
        {words.slice(0, SHOWN).map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
      {words.length > SHOWN && <p className={styles.quiet}>and {words.length - SHOWN} more</p>}
    </section>
  );
}

/** A choice for each part that both changed in different ways. */
export function Questions({
  questions,
  choices,
  onChoose,
}: {
  readonly questions: Plan['questions'];
  readonly choices: ReadonlyMap<string, Side>;
  readonly onChoose: (choices: ReadonlyMap<string, Side>) => void;
}) {
  if (questions.length === 0) {
    return <p>Nothing was changed in different ways: all of it is taken.</p>;
  }
  const open = questions.filter(({ part }) => !choices.has(part)).length;
  return (
    <section aria-label="Changed in both" className={styles.questions}>
      <h3>Changed in both{open > 0 && <span className={styles.open}>: {open} to choose</span>}</h3>
      {questions.map(({ part, where, mine, theirs }) => (
        <Choice<Side | ''>
          key={part}
          label={where}
          value={choices.get(part) ?? ''}
          options={[
            { value: 'mine', label: `here: ${mine}` },
            { value: 'theirs', label: `there: ${theirs}` },
          ]}
          onChange={(side) => side !== '' && onChoose(new Map(choices).set(part, side))}
        />
      ))}
    </section>
  );
}

/** What goes because the other one deleted what it names. */
export function LeftOut({ sentences }: { readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <section aria-label="What goes" className={styles.leftOut}>
      <h3>What goes with it</h3>
      <ul>
        {sentences.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </section>
  );
}
