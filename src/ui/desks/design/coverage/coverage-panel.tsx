import { useState } from 'react';
import { coverageMarkdown } from '../../../../core/coverage/markdown.ts';
import { useBench } from '../../../../store/bench.ts';
import { Caution } from '../../../board/caution.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { CopyButton } from '../../../widgets/copy-button.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { CostlyList } from './costly-list.tsx';
import styles from './coverage.module.css';
import type { CountedIn } from './coverage-words.ts';
import { BarLegend, ListBar } from './list-bar.tsx';
import { MissingOfText } from './missing-of-text.tsx';
import { OwnTextBox } from './own-text-box.tsx';
import { ShortcutRows } from './shortcut-rows.tsx';
import { TextLoadView } from './text-load-view.tsx';
import { useCoverage } from './use-coverage.ts';

const COUNTED_IN = [
  { value: 'needs', label: 'each need once' },
  { value: 'characters', label: 'by your text' },
] as const;

/** What the need lists and the typist's own text cost on the open design. */
export function CoveragePanel() {
  const name = useBench((bench) => bench.keymap.name);
  const report = useCoverage();
  const [wanted, setCountedIn] = useState<CountedIn>('characters');
  const { lists, weighted, load } = report;
  const countedIn = weighted === null ? 'needs' : wanted;
  const shown = countedIn === 'characters' && weighted !== null ? weighted : lists;
  return (
    <div className={styles.panel}>
      <OwnTextBox />
      {weighted !== null && (
        <Choice label="Count" value={countedIn} options={COUNTED_IN} onChange={setCountedIn} />
      )}
      {lists.length === 0 ? (
        <p className={styles.quiet}>
          Nothing is asked of this design yet. Choose what you type under “Needs”, or drop some of it above.
        </p>
      ) : (
        <section className={styles.lists} aria-label="Need lists">
          <BarLegend />
          <ul className={styles.lists}>
            {shown.map((list) => (
              <ListBar key={list.name} list={list} countedIn={countedIn} />
            ))}
          </ul>
          <MissingOfText lists={lists} />
        </section>
      )}
      {load !== null && (
        <Disclosure title="What your text costs" startOpen>
          <div className={styles.lists}>
            <TextLoadView load={load} />
          </div>
        </Disclosure>
      )}
      {report.costliest.length > 0 && (
        <Disclosure title={load === null ? 'Needs that cost most' : 'What costs most in your text'} startOpen>
          <CostlyList needs={report.costliest} hasText={load !== null} />
        </Disclosure>
      )}
      {report.shortcuts.length > 0 && (
        <Disclosure title="Shortcuts: hands and fingers">
          <ShortcutRows shortcuts={report.shortcuts} />
        </Disclosure>
      )}
      {lists.length > 0 && <Caution ofLoad />}
      <CopyButton label="Copy as Markdown" textOf={() => coverageMarkdown(name, lists, load)} />
    </div>
  );
}
