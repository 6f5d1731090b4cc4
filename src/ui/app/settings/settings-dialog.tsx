import { useBench } from '../../../store/bench.ts';
import { useSettings } from '../../../store/settings/use-settings.ts';
import { RungChoice } from '../../board/rung-choice.tsx';
import { Button } from '../../widgets/button.tsx';
import { Choice } from '../../widgets/choice.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { usePageVersion } from '../offline/page-version.ts';
import styles from './settings-dialog.module.css';
import { LEGENDS, MOTIONS, networkSentence, THEMES, UNITS } from './settings-options.ts';

/** What a person settles for themselves, on all designs; it takes effect at once and stays with this browser. */
export function SettingsDialog({ onClose }: { readonly onClose: () => void }) {
  const { theme, motion, units, legends, settle } = useSettings();
  const state = usePageVersion((version) => version.state);
  const layers = useBench((bench) => bench.keymap.layers.length);
  return (
    <Dialog
      title="Settings"
      onClose={onClose}
      footer={
        <Button tone="accent" onClick={onClose}>
          Done
        </Button>
      }
    >
      <div className={styles.settings}>
        <Choice label="Look" value={theme} options={THEMES} onChange={(next) => settle({ theme: next })} />
        <Choice
          label="Movement"
          value={motion}
          options={MOTIONS}
          onChange={(next) => settle({ motion: next })}
        />
        <Choice label="Lengths" value={units} options={UNITS} onChange={(next) => settle({ units: next })} />
        <Choice
          label="Legends on keys"
          value={legends}
          options={LEGENDS}
          onChange={(next) => settle({ legends: next })}
        />
        {layers > 1 && <RungChoice />}
        <p className={styles.about}>
          These are yours and not the design’s: they stay in this browser, and no file or link carries them.
          Times are in milliseconds always.
        </p>
        <p className={styles.about}>{networkSentence(state)}</p>
      </div>
    </Dialog>
  );
}
