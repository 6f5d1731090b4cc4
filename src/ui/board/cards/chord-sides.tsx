import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { ChordChange } from '../../../core/keymap/edit.ts';
import { timingOf, timingOfChord } from '../../../core/keymap/timing.ts';
import type { Chord, Keymap } from '../../../core/keymap/types.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import { NumberField } from '../../widgets/number-field.tsx';
import { Select } from '../../widgets/select.tsx';
import { ActionEditor } from './action-editor.tsx';
import { ActionOnShift } from './action-on-shift.tsx';
import styles from './cards.module.css';
import { HOLD_BY, LONGEST_MS, wordsOf, YesOrNo } from './timing-choices.tsx';

interface ChordSidesProps {
  readonly keymap: Keymap;
  readonly host: HostLayout | null;
  readonly chord: Omit<Chord, 'id'>;
  readonly onChange: (to: ChordChange) => void;
}

/** What a chord does besides its tap: under Shift, held, and with which of its keys it ends. */
export function ChordSides({ keymap, host, chord, onChange }: ChordSidesProps) {
  const { onShift, hold, release = 'first-up' } = chord;
  return (
    <>
      <ActionOnShift
        keymap={keymap}
        host={host}
        action={onShift}
        onChange={(action) => onChange({ onShift: action })}
      />
      <Disclosure title="When its keys stay down" startOpen={hold !== undefined || release !== 'first-up'}>
        <div className={styles.fields}>
          <p className={styles.reason}>
            A chord can do something else when it is held, as a key can; and it ends when its keys come up.
          </p>
          <Select
            label="It ends when"
            value={release}
            options={[
              { value: 'first-up', label: 'the first of its keys comes up' },
              { value: 'last-up', label: 'the last of its keys comes up' },
            ]}
            onChange={(to) => onChange({ release: to === 'first-up' ? null : to })}
          />
          <ActionEditor
            keymap={keymap}
            host={host}
            side="hold"
            label="When held"
            action={hold}
            noneWords="no hold"
            onChange={(action) => onChange({ hold: action })}
            onNone={hold && (() => onChange({ hold: null }))}
          />
          {hold !== undefined && <ChordTiming keymap={keymap} chord={chord} onChange={onChange} />}
        </div>
      </Disclosure>
    </>
  );
}

/** How a chord with a hold is settled. */
function ChordTiming({ keymap, chord, onChange }: Omit<ChordSidesProps, 'host'>) {
  const now = timingOfChord(keymap, { ...chord, id: '' });
  const whole = timingOf(keymap);
  return (
    <>
      <div className={styles.pair}>
        <NumberField
          label="Hold after"
          unit="ms"
          value={now.holdAfterMs}
          min={0}
          max={LONGEST_MS}
          step={5}
          onCommit={(holdAfterMs) => onChange({ holdAfterMs })}
        />
        <Select
          label="Hold by"
          value={chord.holdBy ?? 'default'}
          options={[{ value: 'default', label: `the design’s: ${wordsOf(whole.holdBy)}` }, ...HOLD_BY]}
          onChange={(value) => onChange({ holdBy: value === 'default' ? null : value })}
        />
      </div>
      <YesOrNo
        label="Tap if held alone"
        value={chord.tapIfAlone}
        whole={whole.tapIfAlone}
        onChange={(tapIfAlone) => onChange({ tapIfAlone })}
      />
    </>
  );
}
