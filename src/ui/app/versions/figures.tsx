import type { AccidentChange } from '../../../core/versions/accident-changes.ts';
import type { CostChange } from '../../../core/versions/need-changes.ts';
import type { ComparedDesigns } from '../../../store/versions/use-comparison.ts';
import { Caution } from '../../board/caution.tsx';
import { accidentLines, figureRows, needsText, relearningWords } from './version-words.ts';
import styles from './versions.module.css';

/** What the change does to typing: relearning as a bar, needs and accidents in figures. */
export function Figures({ compared: { typing, text } }: { readonly compared: ComparedDesigns }) {
  if (typing.state === 'failed') return <p className={styles.quiet}>{typing.why}</p>;
  if (typing.state === 'reckoning') {
    return (
      <p className={styles.quiet} role="status">
        Reckoning needs, accidents and relearning…
      </p>
    );
  }
  const { relearning, needs, accidents } = typing.typing;
  const title = text.isOwn ? `your own text (${text.title})` : `the text “${text.title}”`;
  return (
    <section aria-label="What it does to typing" className={styles.figures}>
      <div className={styles.relearning}>
        <h3>Relearning</h3>
        <div className={styles.bar} aria-hidden="true">
          <span style={{ width: `${Math.min(100, relearning.percent)}%` }} />
        </div>
        <p>{relearningWords(relearning, title)}</p>
        {needs.gained.length > 0 && <p>Can be typed now: {needsText(needs.gained)}</p>}
        {needs.lost.length > 0 && (
          <p className={styles.lost}>Can no longer be typed: {needsText(needs.lost)}</p>
        )}
        <CostLine label="Fewer presses now" changes={needs.cheaper} />
        <CostLine label="More presses now" changes={needs.dearer} />
      </div>
      <table className={styles.table}>
        <thead>
          <tr>
            <td />
            <th scope="col">before</th>
            <th scope="col">after</th>
          </tr>
        </thead>
        <tbody>
          {figureRows(typing.typing).map(({ name, before, after, change }) => (
            <tr key={name} data-change={change}>
              <th scope="row">{name}</th>
              <td>{before}</td>
              <td>
                {after}
                {change !== 'same' && <span className={styles.verdict}> {change}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <ChangedAccidents changes={accidents.changes} />
      <Caution ofLoad />
    </section>
  );
}

/** Which chords and holds do better or worse. */
function ChangedAccidents({ changes }: { readonly changes: readonly AccidentChange[] }) {
  if (changes.length === 0) return null;
  return (
    <div className={styles.accidents}>
      {accidentLines(changes).map(({ title, lines, more }) => (
        <div key={title}>
          <h3>{title}</h3>
          <ul>
            {lines.map(({ who, what }) => (
              <li key={`${who} ${what}`}>
                {who} <span className={styles.quiet}>{what}</span>
              </li>
            ))}
          </ul>
          {more > 0 && <p className={styles.quiet}>and {more} more</p>}
        </div>
      ))}
    </div>
  );
}

function CostLine({ label, changes }: { readonly label: string; readonly changes: readonly CostChange[] }) {
  if (changes.length === 0) return null;
  return (
    <p className={styles.quiet}>
      {label}: {needsText(changes.map(({ need }) => need))}
    </p>
  );
}
