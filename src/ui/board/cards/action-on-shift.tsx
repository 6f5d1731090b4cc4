import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { Keymap, ShiftedAction } from '../../../core/keymap/types.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import { ActionEditor } from './action-editor.tsx';
import { asShifted, SHIFTED_KINDS } from './action-kinds.ts';
import styles from './cards.module.css';

interface ActionOnShiftProps {
  readonly keymap: Keymap;
  readonly host: HostLayout | null;
  readonly action: ShiftedAction | undefined;
  /** null takes it away. */
  readonly onChange: (action: ShiftedAction | null) => void;
}

/** What comes in place of a tap while Shift is on: its own editor, folded away where there is none. */
export function ActionOnShift({ keymap, host, action, onChange }: ActionOnShiftProps) {
  return (
    <Disclosure title="With Shift" startOpen={action !== undefined}>
      <p className={styles.reason}>
        What comes instead while Shift is held; without it, the same with Shift.
      </p>
      <ActionEditor
        keymap={keymap}
        host={host}
        side="tap"
        label="With Shift"
        kinds={SHIFTED_KINDS}
        action={action}
        noneWords="the same, with Shift"
        onChange={(next) => {
          const shifted = asShifted(next);
          if (shifted !== null) onChange(shifted);
        }}
        onNone={action && (() => onChange(null))}
      />
    </Disclosure>
  );
}
