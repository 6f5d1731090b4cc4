import { useEffect, useRef, useState } from 'react';
import { LIMITS } from '../../../core/keymap/limits.ts';
import type { Version } from '../../../store/versions/version.ts';
import { versions as store } from '../../../store/versions/versions.ts';
import { CommitField } from '../../widgets/commit-field.tsx';
import { MenuButton } from '../../widgets/menu.tsx';
import { scrolledTo } from '../../widgets/scrolled-to.ts';
import { timeText } from '../designs/time-text.ts';
import { versionTitle } from './version-words.ts';
import styles from './versions.module.css';

/** The versions of a design, the newest first; choosing one compares it with the design as it is now. */
export function VersionList({
  designId,
  versions,
  chosen,
  canChange,
  onChoose,
}: {
  readonly designId: string;
  readonly versions: readonly Version[];
  readonly chosen: string | null;
  readonly canChange: boolean;
  readonly onChoose: (id: string) => void;
}) {
  const [renaming, setRenaming] = useState<string | null>(null);
  const { rename, remove } = store.getState();
  const list = useListShowing(chosen);
  return (
    <ul ref={list} className={styles.list} aria-label="Kept versions">
      {versions.map((version) =>
        renaming === version.id ? (
          <li key={version.id} className={styles.row}>
            <CommitField
              label="Name of the version"
              hideLabel
              autoFocus
              value={version.name ?? ''}
              maxLength={LIMITS.nameLength}
              problemOf={(text) => (text === '' ? 'A version needs a name to be found by.' : undefined)}
              onCommit={(name) => void rename(designId, version.id, name)}
              onDone={() => setRenaming(null)}
            />
          </li>
        ) : (
          <li key={version.id} className={styles.row} data-chosen={version.id === chosen}>
            <button
              type="button"
              className={styles.choose}
              aria-pressed={version.id === chosen}
              onClick={() => onChoose(version.id)}
            >
              <span className={styles.title} data-named={version.name !== null}>
                {versionTitle(version, Date.now())}
              </span>
              {version.name !== null && (
                <span className={styles.when}>{timeText(version.keptAt, Date.now())}</span>
              )}
            </button>
            {canChange && (
              <MenuButton
                label={`More for ${versionTitle(version, Date.now())}`}
                items={[
                  {
                    label: version.name === null ? 'Give it a name' : 'Rename',
                    onSelect: () => setRenaming(version.id),
                  },
                  {
                    label: 'Delete',
                    tone: 'danger',
                    onSelect: () => void remove(designId, version.id),
                  },
                ]}
              >
                <span aria-hidden="true">⋯</span>
              </MenuButton>
            )}
          </li>
        ),
      )}
    </ul>
  );
}

/** A list that is shorter than what it holds scrolls to what is chosen, also from elsewhere; the page stays where it is. */
function useListShowing(chosen: string | null) {
  const list = useRef<HTMLUListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is chosen is read off the page
  useEffect(() => {
    const { current } = list;
    const row = current?.querySelector('[data-chosen=true]');
    if (current === null || row === null || row === undefined) return;
    const { top, height } = row.getBoundingClientRect();
    const at = top - current.getBoundingClientRect().top + current.scrollTop;
    current.scrollTop = scrolledTo(current, { at, height });
  }, [chosen]);
  return list;
}
