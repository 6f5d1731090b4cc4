import { useMemo, useState } from 'react';
import type { Chord } from '../../../core/keymap/types.ts';
import { between } from '../../../core/typist/study.ts';
import { useChordStudy } from '../../../store/accidents/use-accidents.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { Slider } from '../../widgets/slider.tsx';
import { ChoiceCard } from './choice-card.tsx';
import { DamageList } from './damage-list.tsx';

/** The windows that the slider offers, ms. */
const WINDOW = { min: 10, max: 200, step: 1 } as const;
/** A chord that is still being made has no id of its own. */
const NEW = '';

/** The window of a chord: what every window would bring on the text, and the slider. */
export function ChordWindow({
  chord,
  onChange,
}: {
  readonly chord: Omit<Chord, 'id'> & { readonly id?: string };
  readonly onChange: (windowMs: number) => void;
}) {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const [preview, setPreview] = useState<number | null>(null);
  const study = useChordStudy(useMemo(() => ({ ...chord, id: chord.id ?? NEW }), [chord]));
  // A window from a file may lie beyond the slider's ends; it is shown as it is.
  const limits = {
    ...WINDOW,
    min: Math.min(WINDOW.min, chord.windowMs),
    max: Math.max(WINDOW.max, chord.windowMs),
  };
  const now = study === null ? null : between(study.points, preview ?? chord.windowMs);
  const isFive = chord.keys.length > 4;
  return (
    <div>
      {study !== null && now !== null && !isFive && (
        <ChoiceCard
          what="chord"
          points={study.points}
          now={now}
          suggested={study.suggested}
          onTake={onChange}
        />
      )}
      <Slider
        label="Window"
        unit="ms"
        value={chord.windowMs}
        {...limits}
        onPreview={setPreview}
        onCommit={onChange}
      />
      {isFive && (
        <p>How often typing sets off a chord of five keys only a simulation can say: see “Accidents”.</p>
      )}
      {study !== null && <DamageList damage={study.damage} source={{ keymap, host }} />}
    </div>
  );
}
