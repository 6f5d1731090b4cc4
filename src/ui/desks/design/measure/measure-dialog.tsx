import { type ReactNode, useState } from 'react';
import { useStore } from 'zustand';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { measured, useTypist } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { ChordsStep } from './chords-step.tsx';
import { FiguresButtons } from './figures-buttons.tsx';
import { FiguresStep } from './figures-step.tsx';
import { legendsOf } from './key-legends.ts';
import { sayNotKept } from './not-kept.ts';
import { OpenFigures } from './open-figures.tsx';
import { Session } from './session.ts';
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
  const { typed } = useTypist();
  const { host } = useHost(useBench((bench) => bench.keymap));
  const [step, setStep] = useState<Step>(known === null ? 'typing' : 'figures');
  const [session, setSession] = useState(() => new Session());
  const [isLeaving, setLeaving] = useState(false);
  const take = () => {
    measured.getState().take(session.measured(typed.counts), session.clockStepMs, 'add').catch(sayNotKept);
    setSession(new Session());
    setLeaving(false);
    setStep('figures');
  };
  // A paragraph is not typed again for a click beside the dialog.
  const close = () => (session.isEmpty ? onClose() : setLeaving(true));
  return (
    <Dialog
      title={TITLES[step]}
      width="wide"
      onClose={close}
      footer={footerOf(
        isLeaving && (
          <Leaving
            words={session.words}
            onStay={() => setLeaving(false)}
            onTake={take}
            onThrowAway={onClose}
          />
        ),
        step === 'figures' && known !== null && (
          <FiguresButtons typist={known} onMore={() => setStep('typing')} onClose={onClose} />
        ),
      )}
    >
      {step === 'typing' && <TypingStep recorder={session.recorder} onDone={() => setStep('chords')} />}
      {step === 'chords' && (
        <ChordsStep session={session} legendOf={legendsOf(host, session.recorder.keys)} onDone={take} />
      )}
      {step === 'figures' && known !== null && <FiguresStep typist={known} />}
      {step !== 'chords' && <OpenFigures known={known !== null} onOpened={() => setStep('figures')} />}
    </Dialog>
  );
}

/** The first that there is; undefined leaves the foot out. */
function footerOf(...candidates: readonly ReactNode[]): ReactNode {
  return candidates.find((candidate) => candidate !== false);
}

/** What to do with what has been recorded, asked before it goes. */
function Leaving({
  words,
  onStay,
  onTake,
  onThrowAway,
}: {
  readonly words: string;
  readonly onStay: () => void;
  readonly onTake: () => void;
  readonly onThrowAway: () => void;
}) {
  return (
    <>
      <p role="alert">So far there are {words}.</p>
      <Button tone="danger" onClick={onThrowAway}>
        Throw them away
      </Button>
      <Button onClick={onStay}>Go on</Button>
      <Button tone="accent" onClick={onTake}>
        See the figures
      </Button>
    </>
  );
}
