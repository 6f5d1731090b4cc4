import type { CheckReport } from '../../../core/check/report.ts';
import { reportMarkdown } from '../../../core/check/report-markdown.ts';
import { Button } from '../../widgets/button.tsx';
import { CopyButton } from '../../widgets/copy-button.tsx';
import { saveFile } from '../../widgets/save-file.ts';
import styles from './check.module.css';

/** Under the board: what is likely wrong and what to do about it, and the report to take along. */
export function ReportView({ report }: { readonly report: CheckReport }) {
  const { right, wrong, silent, notPressed } = report.counts;
  const file = (name: string, type: string, text: string) => saveFile({ name, type, text });
  return (
    <section className={styles.report} aria-label="Report">
      <h2 className={styles.heading}>What is likely wrong</h2>
      {report.faults.length === 0 ? (
        <p>
          {wrong + silent === 0
            ? `Nothing: ${right} right${notPressed > 0 ? `, ${notPressed} not pressed yet` : ''}.`
            : 'No cause stands out.'}
        </p>
      ) : (
        <ul className={styles.faults}>
          {report.faults.map(({ kind, what, todo }) => (
            <li key={what} data-fault={kind}>
              <b>{what}</b> {todo}
            </li>
          ))}
        </ul>
      )}
      <p className={styles.quiet}>{report.caution}</p>
      <div className={styles.buttons}>
        <CopyButton label="Copy as Markdown" textOf={() => reportMarkdown(report)} />
        <Button onClick={() => file('board-check.md', 'text/markdown', reportMarkdown(report))}>
          Save as Markdown
        </Button>
        <Button
          onClick={() => file('board-check.json', 'application/json', `${JSON.stringify(report, null, 2)}\n`)}
        >
          Save as JSON
        </Button>
      </div>
    </section>
  );
}
