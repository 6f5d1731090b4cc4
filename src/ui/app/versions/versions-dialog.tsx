import { useEffect, useState } from 'react';
import type { Keymap } from '../../../core/keymap/types.ts';
import { restoreEdit } from '../../../core/versions/restore.ts';
import { useBench } from '../../../store/bench.ts';
import type { Version } from '../../../store/versions/version.ts';
import { versions as store, useVersions } from '../../../store/versions/versions.ts';
import { Button } from '../../widgets/button.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { Select } from '../../widgets/select.tsx';
import { Comparison } from './comparison.tsx';
import { KeepVersion } from './keep-version.tsx';
import { VersionList } from './version-list.tsx';
import { noneWords, versionTitle } from './version-words.ts';
import styles from './versions.module.css';

/** Stands for the design as it is now among the versions that can be chosen. */
const NOW = 'now';

/** The versions of the open design: keeping, comparing any two, restoring. */
export function VersionsDialog({ onClose }: { readonly onClose: () => void }) {
  const designId = useBench((bench) => bench.designId);
  const keymap = useBench((bench) => bench.keymap);
  const readOnly = useBench((bench) => bench.readOnly);
  const isLoaded = useVersions((state) => state.designId) === designId;
  const versions = useVersions((state) => state.versions);
  const problem = useVersions((state) => state.problem);
  const [beforeId, setBefore] = useState<string | null>(null);
  const [afterId, setAfter] = useState(NOW);
  useEffect(() => void store.getState().load(designId), [designId]);
  const before = versions.find(({ id }) => id === beforeId) ?? versions[0];
  const after = versions.find(({ id }) => id === afterId);
  return (
    <Dialog title="Versions" width="full" onClose={onClose}>
      <div className={styles.sides}>
        <div className={styles.kept}>
          {!readOnly && <KeepVersion designId={designId} keymap={keymap} />}
          <VersionList
            designId={designId}
            versions={isLoaded ? versions : []}
            chosen={before?.id ?? null}
            canChange={!readOnly}
            onChoose={(id) => {
              setBefore(id);
              setAfter(NOW);
            }}
          />
        </div>
        {isLoaded && before !== undefined ? (
          <div className={styles.compared}>
            <div className={styles.pair}>
              <VersionSelect label="Before" value={before.id} versions={versions} onChange={setBefore} />
              <VersionSelect
                label="After"
                value={after?.id ?? NOW}
                versions={versions}
                onChange={setAfter}
                withNow
              />
              {!readOnly && (
                <Button
                  className={styles.restore}
                  onClick={() => {
                    onClose();
                    restore(keymap, before);
                  }}
                >
                  Restore “{versionTitle(before, Date.now())}”
                </Button>
              )}
            </div>
            <Comparison before={before.keymap} after={after?.keymap ?? keymap} />
          </div>
        ) : (
          <p className={styles.none}>{noneWords(isLoaded, problem)}</p>
        )}
      </div>
    </Dialog>
  );
}

function restore(present: Keymap, version: Version): void {
  const { edit, notify } = useBench.getState();
  const title = `Restore “${versionTitle(version, Date.now())}”`;
  edit(restoreEdit(present, version.keymap, title));
  if (useBench.getState().keymap === present) return;
  notify({ tone: 'done', text: `${title}: done. One step back undoes it.`, canUndo: true });
}

function VersionSelect({
  label,
  value,
  versions,
  onChange,
  withNow = false,
}: {
  readonly label: string;
  readonly value: string;
  readonly versions: readonly Version[];
  readonly onChange: (id: string) => void;
  readonly withNow?: boolean;
}) {
  const now = Date.now();
  const options = [
    ...(withNow ? [{ value: NOW, label: 'As it is now' }] : []),
    ...versions.map((version) => ({ value: version.id, label: versionTitle(version, now) })),
  ];
  return <Select label={label} value={value} options={options} onChange={onChange} />;
}
