import { useState } from 'react';
import { backupText, readBackupFile } from '../../../store/keeping/backup/backup-file.ts';
import { BACKUP_STEPS } from '../../../store/keeping/backup/histories-part.ts';
import { backupParts } from '../../../store/keeping/backup/parts.ts';
import { planRestore, type RestorePlan } from '../../../store/keeping/backup/restore.ts';
import { designs } from '../../../store/keeping/use-designs.ts';
import { Button } from '../../widgets/button.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { saveFile } from '../../widgets/save-file.ts';
import { useFilePicker } from '../transfer/use-file-picker.ts';
import styles from './backup.module.css';
import { backupName, savedWords } from './backup-words.ts';
import { RestoreView } from './restore-view.tsx';

/** Saves all that the browser keeps as one file, and brings such a file back beside what is there. */
export function BackupDialog({ onClose }: { readonly onClose: () => void }) {
  const [problem, setProblem] = useState('');
  const [saved, setSaved] = useState('');
  const [plan, setPlan] = useState<RestorePlan | null>(null);
  const [isBusy, setBusy] = useState(false);
  const during = async (work: () => Promise<void>) => {
    setBusy(true);
    setProblem('');
    setSaved('');
    await work().catch((error: unknown) =>
      setProblem(error instanceof Error ? error.message : String(error)),
    );
    setBusy(false);
  };
  const save = () =>
    during(async () => {
      await designs.getState().flush();
      const now = Date.now();
      const { text, spared } = await backupText(backupParts(), now);
      saveFile({ name: backupName(now), type: 'application/json', text });
      setSaved(savedWords(spared));
    });
  const pick = useFilePicker('.json,application/json', (file) =>
    during(async () => {
      setPlan(null);
      await designs.getState().flush();
      const read = await readBackupFile(file);
      if (read.ok) setPlan(await planRestore(read.value, backupParts(), () => crypto.randomUUID()));
      else setProblem(`${read.problem} Nothing was changed.`);
    }),
  );
  const restore = (fromBackup: ReadonlySet<string>) =>
    during(async () => {
      await plan?.carryOut(fromBackup);
      // Every part of the page takes up what is kept when it is loaded.
      location.reload();
    });
  return (
    <Dialog title="Backup" onClose={onClose}>
      <section className={styles.part}>
        <h3>Save everything in one file</h3>
        <p>
          Designs with their versions and their last {BACKUP_STEPS} steps that can be undone, practice,
          recorded streams, overlays, the counts of your own text, the measured typist and the settings: all
          that this browser keeps.
        </p>
        <div>
          <Button tone="accent" disabled={isBusy} onClick={() => void save()}>
            Save a backup file
          </Button>
        </div>
        {saved !== '' && <p role="status">{saved}</p>}
      </section>
      <section className={styles.part}>
        <h3>Bring a backup back</h3>
        <p>
          It is laid beside what is here: nothing is overwritten unless you say so, and nothing is deleted.
        </p>
        <div>
          <Button disabled={isBusy} onClick={pick}>
            Choose a backup file…
          </Button>
        </div>
        {problem !== '' && (
          <p className={styles.problem} role="alert">
            {problem}
          </p>
        )}
        {plan !== null && (
          <RestoreView plan={plan} isBusy={isBusy} onRestore={(from) => void restore(from)} />
        )}
      </section>
    </Dialog>
  );
}
