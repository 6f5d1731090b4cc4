import { COST_CLASSES } from '../../../../core/coverage/cost-class.ts';
import type { ListCoverage } from '../../../../core/coverage/coverage.ts';
import { parseNeed } from '../../../../core/keymap/need.ts';
import { needLegend } from '../needs/need-rows.ts';
import { barWords, type CountedIn, plain, standingWords, stretchesOf } from './coverage-words.ts';
import styles from './list-bar.module.css';

/** How many missing needs are named. */
const NAMED = 40;
/** A stretch shorter than this share of its bar has no room for its number. */
const ROOM_FOR_NUMBER = 0.09;

/** A need list as a bar of its cost classes, with what is missing by name. */
export function ListBar({ list, countedIn }: { readonly list: ListCoverage; readonly countedIn: CountedIn }) {
  const missing = list.missingNeeds.slice(0, NAMED).map(glyphOf);
  const more = list.missingNeeds.length - missing.length;
  return (
    <li className={styles.list} data-list={list.name}>
      <h2>{list.title}</h2>
      <p className={styles.standing}>{standingWords(list, countedIn)}</p>
      {list.total > 0 && (
        <div className={styles.bar} role="img" aria-label={`${list.title}: ${barWords(list)}`}>
          {stretchesOf(list).map(({ name, count, share }) => (
            <span
              key={name}
              className={styles.stretch}
              data-class={name}
              title={`${name}: ${plain(count)}`}
              style={{ flexGrow: share }}
            >
              {share >= ROOM_FOR_NUMBER && plain(count)}
            </span>
          ))}
        </div>
      )}
      {missing.length > 0 && (
        <p className={styles.missing}>
          <b>Missing:</b> {missing.join(' ')}
          {more > 0 && ` and ${plain(more)} more`}
        </p>
      )}
    </li>
  );
}

function glyphOf(text: string): string {
  const read = parseNeed(text);
  return read.ok ? needLegend(read.value).glyph : text;
}

/** What the stretches of the bars mean. */
export function BarLegend() {
  return (
    <ul className={styles.legend} aria-label="What the bars show">
      {[...COST_CLASSES, 'missing'].map((name) => (
        <li key={name}>
          <span className={styles.swatch} data-class={name} />
          {name}
        </li>
      ))}
    </ul>
  );
}
