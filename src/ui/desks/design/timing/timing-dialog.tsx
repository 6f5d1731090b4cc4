import { timingOf } from '../../../../core/keymap/timing.ts';
import type { HoldBy } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { Slider } from '../../../widgets/slider.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import styles from './timing.module.css';

const HOLD_BY: readonly { readonly value: HoldBy; readonly label: string; readonly hint: string }[] = [
  { value: 'time-only', label: 'time only', hint: 'a hold when it has been down long enough' },
  { value: 'press-inside', label: 'a press inside', hint: 'a hold, too, as soon as another key goes down' },
  {
    value: 'tap-inside',
    label: 'a tap inside',
    hint: 'a hold, too, when another key goes down and comes up',
  },
];

/** The timing of every hold/tap key that has none of its own. */
export function TimingDialog({ onClose }: { readonly onClose: () => void }) {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const timing = timingOf(keymap);
  return (
    <Dialog
      title="Timing of hold/tap keys"
      onClose={onClose}
      width="wide"
      footer={
        <Button tone="accent" onClick={onClose}>
          Done
        </Button>
      }
    >
      <div className={styles.fields}>
        <p className={styles.about}>
          For every key with both a tap and a hold that says nothing else on its own card.
        </p>
        <Slider
          label="Hold after"
          unit="ms"
          min={0}
          max={1000}
          step={5}
          value={timing.holdAfterMs}
          onCommit={(holdAfterMs) => edit({ edit: 'set-timing', timing: { holdAfterMs } })}
        />
        <Choice
          label="Hold by"
          look="cards"
          value={timing.holdBy}
          options={HOLD_BY}
          onChange={(holdBy) => edit({ edit: 'set-timing', timing: { holdBy } })}
        />
        <Slider
          label="Quiet before: a tap at once when another key went down less than this long ago"
          unit="ms"
          min={0}
          max={500}
          step={5}
          value={timing.quietBeforeMs}
          onCommit={(quietBeforeMs) => edit({ edit: 'set-timing', timing: { quietBeforeMs } })}
        />
        <Slider
          label="Again within: a tap at once when the same key was tapped less than this long ago"
          unit="ms"
          min={0}
          max={500}
          step={5}
          value={timing.againWithinMs}
          onCommit={(againWithinMs) => edit({ edit: 'set-timing', timing: { againWithinMs } })}
        />
        <Switch
          label="Same hand taps: a tap when the next key is one of the same hand"
          on={timing.sameHandTaps}
          onChange={(sameHandTaps) => edit({ edit: 'set-timing', timing: { sameHandTaps } })}
        />
        <Switch
          label="Tap if held alone: a tap however long it was held, unless another key was pressed meanwhile"
          on={timing.tapIfAlone}
          onChange={(tapIfAlone) => edit({ edit: 'set-timing', timing: { tapIfAlone } })}
        />
      </div>
    </Dialog>
  );
}
