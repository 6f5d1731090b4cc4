import { useState } from 'react';
import { useStore } from 'zustand';
import { clockStepMs, NO_SHARES, observed, pairSharesOf } from '../../../../core/typist/fit-observe.ts';
import type { MeasuredChord } from '../../../../core/typist/measured.ts';
import { writeMeasured } from '../../../../core/typist/measured-file.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { measured, useTypist } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { saveFile } from '../../../widgets/save-file.ts';
import { ChordsStep } from './chords-step.tsx';
import { FiguresStep } from './figures-step.tsx';
import { legendsOf } from './key-legends.ts';
import type { TypingRecorder } from './typing-recorder.ts';
import { TypingStep } from './typing-step.tsx';

type Step = 'typing' | 'chords' | 'figures';

const TITLES: Readonly<Record<Step, string>> = {
  typing: 'Measure me: type a paragraph',
  chords: 'Measure me: make twenty chords',
  figures: 'Your own figures',
};

/** Measures the typist at this computer, step by step; whoever was measured before sees their figures first. */
export function MeasureDialog({ onClose }: { readonly onClose: () => void }) {
  const known = useStore(measured, ({ typist }) => typist);
  const { typed, speed, setSpeed } = useTypist();
  const { host } = useHost(useBench((bench) => bench.keymap));
  const [step, setStep] = useState<Step>(known === null ? 'typing' : 'figures');
  const [recorder, setRecorder] = useState<TypingRecorder | null>(null);
  const finish = (chords: readonly MeasuredChord[], times: readonly number[]) => {
    const keys = recorder?.keys ?? [];
    const shareOf = typed.counts === null ? NO_SHARES : pairSharesOf(typed.counts);
    const stamps = [
      ...keys.flatMap(({ downMs, upMs }) => (upMs === null ? [downMs] : [downMs, upMs])),
      ...times,
    ];
    void measured.getState().take({ ...observed(keys, shareOf), chords }, clockStepMs(stamps), 'add');
    setRecorder(null);
    setStep('figures');
  };
  const isUsed = speed === 'measured';
  return (
    <Dialog
      title={TITLES[step]}
      width="wide"
      onClose={onClose}
      footer={
        step === 'figures' && known !== null ? (
          <>
            <Button tone="danger" onClick={() => void forget(isUsed, setSpeed, onClose)}>
              Delete my figures
            </Button>
            <Button
              onClick={() =>
                saveFile({
                  name: 'measured-typist.json',
                  type: 'application/json',
                  text: writeMeasured(known.file),
                })
              }
            >
              Save as a file
            </Button>
            <Button onClick={() => setStep('typing')}>Measure more</Button>
            {known.person !== null && (
              <Button
                tone="accent"
                onClick={() => {
                  setSpeed('measured');
                  onClose();
                }}
              >
                {isUsed ? 'Done' : 'Use them for estimates'}
              </Button>
            )}
          </>
        ) : undefined
      }
    >
      {step === 'typing' && (
        <TypingStep
          onDone={(done) => {
            setRecorder(done);
            setStep('chords');
          }}
        />
      )}
      {step === 'chords' && <ChordsStep legendOf={legendsOf(host, recorder?.keys ?? [])} onDone={finish} />}
      {step === 'figures' && known !== null && <FiguresStep typist={known} />}
    </Dialog>
  );
}

async function forget(
  isUsed: boolean,
  setSpeed: (speed: 'average') => void,
  onClose: () => void,
): Promise<void> {
  if (isUsed) setSpeed('average');
  await measured.getState().forget();
  onClose();
}
