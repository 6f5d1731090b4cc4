import { useMemo, useState } from 'react';
import { namesOf } from '../../../core/rehearse/key-words.ts';
import { useRehearsal } from '../../../store/rehearse/rehearsal.ts';
import { slipsIn, usePlayed, useTried } from '../../../store/rehearse/use-runs.ts';
import { Choice } from '../../widgets/choice.tsx';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import { BesidePanel } from './beside/beside-panel.tsx';
import { DiaryPanel } from './diary/diary-panel.tsx';
import { MainPart } from './main-part.tsx';
import styles from './rehearse.module.css';
import { SettingsPanel } from './settings/settings-panel.tsx';
import { SlipsPanel } from './slips/slips-panel.tsx';
import { SourcePanel } from './source/source-panel.tsx';
import { TypingBar } from './typing-bar.tsx';

/** The rehearse desk: where presses come from, the time line, and what can be learnt from it. */
export function RehearseDesk() {
  const [toType, setToType] = useState('');
  const slipCount = useSlipCount();
  return (
    <DeskFrame
      left={<SourcePanel toType={toType} onToType={setToType} />}
      leftLabel="Presses"
      isTall
      main={
        <div className={styles.main}>
          <TypingBar toType={toType} />
          <MainPart />
        </div>
      }
      right={<RightSide />}
      rightLabel="Slips, settings"
      rightBadge={slipCount}
    />
  );
}

const RIGHT = [
  { value: 'slips', label: 'Slips' },
  { value: 'settings', label: 'Settings' },
  { value: 'beside', label: 'Beside' },
  { value: 'diary', label: 'Diary' },
] as const;

function RightSide() {
  const [shown, setShown] = useState<(typeof RIGHT)[number]['value']>('slips');
  const { keymap, host } = useTried();
  const names = useMemo(() => namesOf(keymap, host), [keymap, host]);
  return (
    <>
      <div className={styles.switch}>
        <Choice label="Right of the time line" hideLabel value={shown} options={RIGHT} onChange={setShown} />
      </div>
      <div className={styles.panel}>
        {shown === 'slips' && <SlipsPanel names={names} />}
        {shown === 'settings' && <SettingsPanel names={names} />}
        {shown === 'beside' && <BesidePanel names={names} />}
        {shown === 'diary' && <DiaryPanel names={names} />}
      </div>
    </>
  );
}

/** How many slips there are: what a closed side must still say; null for none. */
function useSlipCount(): number | null {
  const played = usePlayed();
  const meant = useRehearsal((state) => state.stream?.meant ?? null);
  const count = played?.ok ? slipsIn(played.value, meant).length : 0;
  return count === 0 ? null : count;
}
