import { useEffect, useMemo, useState } from 'react';
import type { Keymap } from '../../../core/keymap/types.ts';
import type { Choice as Side } from '../../../core/versions/merge.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import type { OpenBranch } from '../../../store/keeping/designs-state.ts';
import { useDesigns } from '../../../store/keeping/use-designs.ts';
import { Button } from '../../widgets/button.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import styles from './together.module.css';
import { planOf, threeStates, togetherEdit } from './together.ts';
import { Changed, LeftOut, Questions } from './together-parts.tsx';

/** Brings a copy and its original together: what each changed, and a choice wherever both changed the same. */
export function TogetherDialog({
  branch,
  onClose,
}: {
  readonly branch: OpenBranch;
  readonly onClose: () => void;
}) {
  const copy = useBench((bench) => bench.keymap);
  const { host } = useHost(copy);
  const { readOriginal, bringTogether, keepApart } = useDesigns((state) => state);
  const [original, setOriginal] = useState<Keymap | 'gone' | null>(null);
  const [choices, setChoices] = useState<ReadonlyMap<string, Side>>(new Map());
  useEffect(() => void readOriginal().then((kept) => setOriginal(kept ?? 'gone')), [readOriginal]);
  const plan = useMemo(
    () =>
      original === null || original === 'gone'
        ? null
        : planOf(threeStates(branch, copy, original), choices, host),
    [branch, copy, original, choices, host],
  );
  const bring = async () => {
    const refused = await bringTogether((theirs) => togetherEdit(threeStates(branch, copy, theirs), choices));
    const { notify } = useBench.getState();
    // While the original is opened this dialog may be gone, so what came of it is told by the page.
    if (refused !== null) return notify({ tone: 'refused', text: refused, canUndo: false });
    const text = `Brought both together in “${branch.ofName}”. The copy is among its versions.`;
    notify({ tone: 'done', text, canUndo: false });
    onClose();
  };
  const apart = () => void keepApart().then(onClose);
  return (
    <Dialog
      title={`Bring together with “${branch.ofName}”`}
      width="wide"
      onClose={onClose}
      footer={
        <>
          <Button onClick={apart}>Keep them as two designs</Button>
          <Button
            tone="accent"
            disabled={plan === null || plan.open > 0 || !plan.outcome.ok}
            onClick={() => void bring()}
          >
            Bring both together
          </Button>
        </>
      }
    >
      {original === 'gone' && <p>“{branch.ofName}” is no longer kept here. The copy stands on its own.</p>}
      {original === null && <p>Looking at “{branch.ofName}”…</p>}
      {plan !== null && (
        <>
          <div className={styles.sides}>
            <Changed title="Changed here" words={plan.here} />
            <Changed title="Changed there" words={plan.there} />
          </div>
          <Questions questions={plan.questions} choices={choices} onChoose={setChoices} />
          {plan.outcome.ok ? (
            <LeftOut sentences={plan.outcome.value.leftOut} />
          ) : (
            <p className={styles.problem} role="alert">
              {plan.outcome.problem}
            </p>
          )}
        </>
      )}
    </Dialog>
  );
}
