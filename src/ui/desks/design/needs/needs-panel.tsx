import { useDeferredValue, useMemo, useRef, useState } from 'react';
import type { NeedRoute } from '../../../../core/routes/types.ts';
import { useAnalysis } from '../../../../store/analysis.ts';
import { useFindList } from '../../../../store/need-lists.ts';
import { usePageDialog } from '../../../../store/page.ts';
import { Badge } from '../../../widgets/badge.tsx';
import { Button } from '../../../widgets/button.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { SearchField } from '../../../widgets/text-field.tsx';
import { HostsLine } from '../hosts/hosts-line.tsx';
import { Looking } from '../looking.tsx';
import { NeedChips } from './need-chips.tsx';
import { NeedDetail } from './need-detail.tsx';
import { groupNeeds } from './need-groups.ts';
import {
  countByStatus,
  keptRows,
  type NeedRow,
  type NeedStatus,
  needRows,
  searchNeeds,
} from './need-rows.ts';
import { needSources } from './need-sources.ts';
import { NeedsDialog } from './needs-dialog.tsx';
import styles from './needs-panel.module.css';
import { layerEntries, MODIFIER_ENTRIES } from './palette.ts';
import { PaletteChips } from './palette-chips.tsx';

const STATUSES: readonly NeedStatus[] = ['missing', 'clumsy', 'reached'];

/** All that this typist must produce: what is missing, clumsy or reached, to be searched and put on keys. */
export function NeedsPanel() {
  const { needs, facts } = useAnalysis();
  const { keymap } = facts;
  const findList = useFindList();
  const sources = useMemo(() => needSources(keymap, findList), [keymap, findList]);
  const [query, setQuery] = useState('');
  const [only, setOnly] = useState<NeedStatus | null>(null);
  const [looked, setLooked] = useState<string | null>(null);
  const choosing = usePageDialog('needs');
  const deferredQuery = useDeferredValue(query);
  const rows = useNeedRows(needs);
  const counts = useMemo(() => countByStatus(rows), [rows]);
  const groups = useMemo(() => {
    const found = searchNeeds(rows, deferredQuery).filter((row) => only === null || row.status === only);
    return groupNeeds(found, sources);
  }, [rows, deferredQuery, only, sources]);
  const entries = useMemo(() => layerEntries(keymap), [keymap]);
  return (
    <div className={styles.panel}>
      <div className={styles.head}>
        <HostsLine />
        <SearchField label="Search needs" value={query} onChange={setQuery} />
        <div className={styles.counts}>
          {STATUSES.map((status) => (
            <button
              key={status}
              type="button"
              className={styles.count}
              data-status={status}
              aria-pressed={only === status}
              onClick={() => setOnly(only === status ? null : status)}
            >
              <b>{counts[status]}</b> {status}
            </button>
          ))}
        </div>
        <Looking />
      </div>
      <div className={styles.lists}>
        {groups.map((group) => (
          <Disclosure
            key={group.name}
            title={group.title}
            startOpen
            badge={group.missing > 0 ? <Badge tone="broken">{group.missing} missing</Badge> : undefined}
          >
            <NeedChips group={group} onLook={setLooked} />
          </Disclosure>
        ))}
        {groups.length === 0 && <p className={styles.empty}>{emptyWords(rows.length, query)}</p>}
        {query === '' && only === null && (
          <>
            {entries.length > 0 && (
              <Disclosure title="Layer keys" startOpen>
                <PaletteChips label="Layer keys" entries={entries} />
              </Disclosure>
            )}
            <Disclosure title="Modifiers, latches, blank">
              <PaletteChips label="Modifiers, latches, blank" entries={MODIFIER_ENTRIES} />
            </Disclosure>
          </>
        )}
        <Button onClick={choosing.open} className={styles.choose}>
          Choose what you type…
        </Button>
      </div>
      <NeedDetail row={rows.find(({ text }) => text === looked) ?? null} />
      {choosing.isOpen && <NeedsDialog onClose={choosing.close} />}
    </div>
  );
}

/** The rows of the needs; those of which nothing has come stay the very same from edit to edit. */
function useNeedRows(needs: readonly NeedRoute[]): readonly NeedRow[] {
  const before = useRef<readonly NeedRow[]>([]);
  return useMemo(() => {
    before.current = keptRows(before.current, needRows(needs));
    return before.current;
  }, [needs]);
}

function emptyWords(total: number, query: string): string {
  if (total === 0)
    return 'Nothing is asked of this design yet. Choose what you type, and it is checked at once.';
  return query === '' ? 'None.' : `No need matches “${query}”. It can be added under “Choose what you type”.`;
}
