import { type ReactNode, useState } from 'react';
import type { TimingChange } from '../../../core/keymap/edit.ts';
import { timingOf } from '../../../core/keymap/timing.ts';
import type { Binding, Keymap, Place } from '../../../core/keymap/types.ts';
import { between } from '../../../core/typist/study.ts';
import { useHoldStudy } from '../../../store/accidents/use-accidents.ts';
import { useHost } from '../../../store/hosts.ts';
import { Slider } from '../../widgets/slider.tsx';
import { ChoiceCard } from './choice-card.tsx';
import { DamageList } from './damage-list.tsx';
import { TimingTable } from './timing-table.tsx';

/** The times that the slider offers, ms. */
const HOLD_AFTER = { min: 100, max: 400, step: 5 } as const;

/** Hold after: what every time would bring on the text, the slider, and the rules and protections side by side. */
export function TimingChoice({
  keymap,
  binding,
  place,
  onChange,
  children,
}: {
  readonly keymap: Keymap;
  readonly binding: Binding;
  readonly place: Place;
  readonly onChange: (timing: TimingChange) => void;
  /** Stands under the slider. */
  readonly children: ReactNode;
}) {
  const { host } = useHost(keymap);
  const [preview, setPreview] = useState<number | null>(null);
  const study = useHoldStudy(place);
  const { holdAfterMs } = timingOf(keymap, binding);
  // A time from a file may lie beyond the slider's ends; it is shown as it is.
  const limits = {
    ...HOLD_AFTER,
    min: Math.min(HOLD_AFTER.min, holdAfterMs),
    max: Math.max(HOLD_AFTER.max, holdAfterMs),
  };
  const take = (ms: number) => onChange({ holdAfterMs: ms });
  const now = study === null ? null : between(study.points, preview ?? holdAfterMs);
  return (
    <div>
      {study !== null && now !== null && (
        <ChoiceCard what="hold" points={study.points} now={now} suggested={study.suggested} onTake={take} />
      )}
      <Slider
        label="Hold after"
        unit="ms"
        value={holdAfterMs}
        {...limits}
        onPreview={setPreview}
        onCommit={take}
      />
      {children}
      {study !== null && <DamageList damage={study.damage} source={{ keymap, host }} />}
      {study !== null && <TimingTable cells={study.table} onTake={onChange} />}
    </div>
  );
}
