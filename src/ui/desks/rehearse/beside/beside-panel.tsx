import { useEffect, useMemo, useState } from 'react';
import { compareRuns } from '../../../../core/rehearse/compare.ts';
import { ms, type Names } from '../../../../core/rehearse/key-words.ts';
import type { Run } from '../../../../core/rehearse/run.ts';
import { useBench } from '../../../../store/bench.ts';
import { type OtherDesign, otherDesigns } from '../../../../store/rehearse/other-designs.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { useComparedRun, usePlayed } from '../../../../store/rehearse/use-runs.ts';
import { Select } from '../../../widgets/select.tsx';
import styles from '../rehearse.module.css';
import { Tries } from '../settings/tries.tsx';
import { differenceWords, laterWords } from './beside-words.ts';

/** Two designs or two settings over the same presses: which outputs differ, and where. */
export function BesidePanel({ names }: { readonly names: Names }) {
  const { compared, compareWith, stream, tries } = useRehearsal();
  const designId = useBench((bench) => bench.designId);
  const [others, setOthers] = useState<readonly OtherDesign[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    let isOver = false;
    void otherDesigns(designId).then((list) => {
      if (!isOver) setOthers(list);
    });
    return () => {
      isOver = true;
    };
  }, [designId]);
  const value = compared.with === 'another design' ? compared.id : compared.with;
  const choose = async (chosen: string) => {
    setProblem(null);
    if (chosen === 'nothing' || chosen === 'design as it is') return compareWith({ with: chosen });
    const other = others.find(({ id }) => id === chosen);
    const keymap = await other?.read();
    if (other === undefined || keymap === undefined || keymap === null)
      return setProblem('That design cannot be read.');
    compareWith({ with: 'another design', id: other.id, title: other.title, keymap });
  };
  return (
    <>
      <Tries />
      <Select
        label="Hold against it"
        value={value}
        options={[
          { value: 'nothing', label: 'nothing' },
          { value: 'design as it is', label: 'this design without what is tried' },
          ...others.map(({ id, title, group }) => ({ value: id, label: title, group })),
        ]}
        onChange={(chosen) => void choose(chosen)}
      />
      {problem !== null && (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
      {compared.with === 'nothing' && (
        <p className={styles.hint}>
          The same presses, played once more on another design, or on this one without what is tried: where
          something else comes out is marked on the time line.
        </p>
      )}
      {stream === null && <p className={styles.hint}>There are no presses on the time line yet.</p>}
      {compared.with === 'design as it is' && tries.length === 0 && (
        <p className={styles.hint}>
          Nothing is tried yet, so both are the same. Change a setting, or try one of a slip.
        </p>
      )}
      {compared.with !== 'nothing' && <Differences names={names} />}
    </>
  );
}

function Differences({ names }: { readonly names: Names }) {
  const played = usePlayed();
  const compared = useComparedRun();
  const isTyping = useRehearsal((state) => state.live !== null);
  if (isTyping) return <p className={styles.hint}>What differs shows as soon as you stop typing.</p>;
  if (played === null || compared === null || !played.ok) return null;
  if (!compared.ok)
    return (
      <p className={styles.problem} role="alert">
        The same presses cannot be played there. {compared.problem.reason}
      </p>
    );
  return <Listed run={played.value} other={compared.value} names={names} />;
}

/** So many differences are listed. */
const MOST = 80;

function Listed({ run, other }: { readonly run: Run; readonly other: Run; readonly names: Names }) {
  const setCursor = useRehearsal((state) => state.setCursor);
  const { differences, laterMs, alike } = useMemo(() => compareRuns(run, other), [run, other]);
  return (
    <>
      <p role="status">{laterWords(differences.length, alike, laterMs)}</p>
      {differences.length > 0 && (
        <div className={styles.pair}>
          <span className={styles.heading}>On the time line</span>
          <span className={styles.heading}>Beside it</span>
        </div>
      )}
      <ul className={styles.list}>
        {differences.slice(0, MOST).map((difference) => (
          <li key={`${difference.fromMs} ${difference.toMs}`} className={styles.row}>
            <button type="button" className={styles.plain} onClick={() => setCursor(difference.fromMs)}>
              <span className={styles.hint}>at {ms(difference.fromMs)}</span>
              <span className={styles.pair}>
                <span>{differenceWords(difference.one)}</span>
                <span>{differenceWords(difference.other)}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
      {differences.length > MOST && <p className={styles.hint}>And {differences.length - MOST} more.</p>}
    </>
  );
}
