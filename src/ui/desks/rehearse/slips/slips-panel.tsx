import { useMemo, useState } from 'react';
import type { Names } from '../../../../core/rehearse/key-words.ts';
import { remediesOf } from '../../../../core/rehearse/remedies.ts';
import type { Run } from '../../../../core/rehearse/run.ts';
import { plainText, shownText } from '../../../../core/rehearse/shown-text.ts';
import { type Slip, slipReason, slipTitle } from '../../../../core/rehearse/slips.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { slipsIn, usePlayed } from '../../../../store/rehearse/use-runs.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from '../rehearse.module.css';
import { Tries } from '../settings/tries.tsx';
import { TextArea } from '../text-area.tsx';
import { countWords, slipsWith } from './slip-words.ts';

/** So many slips are listed; a stream with more has another trouble. */
const MOST = 60;

/** What came out otherwise than meant, why, and what would have prevented it. */
export function SlipsPanel({ names }: { readonly names: Names }) {
  const played = usePlayed();
  const stream = useRehearsal((state) => state.stream);
  const isTyping = useRehearsal((state) => state.live !== null);
  if (isTyping) return <p className={styles.hint}>Slips show as soon as you stop typing.</p>;
  if (stream === null || played === null || !played.ok)
    return (
      <p className={styles.hint}>Slips show here once there are presses and it is known what was meant.</p>
    );
  return <Slips key={stream.events.length} run={played.value} meant={stream.meant} names={names} />;
}

function Slips({
  run,
  meant,
  names,
}: {
  readonly run: Run;
  readonly meant: string | null;
  readonly names: Names;
}) {
  const setMeant = useRehearsal((state) => state.setMeant);
  const [draft, setDraft] = useState<string | null>(null);
  const [opened, setOpened] = useState<number | null>(null);
  const slips = slipsIn(run, meant);
  return (
    <>
      <Tries />
      <TextArea
        label="What was meant"
        value={draft ?? meant ?? ''}
        onChange={setDraft}
        onBlur={() => {
          if (draft !== null) setMeant(draft === '' ? null : draft);
          setDraft(null);
        }}
      />
      {meant === null && (
        <div className={styles.buttons}>
          <Button onClick={() => setMeant(plainText(shownText(run.items).tokens))}>Take what came out</Button>
          <span className={styles.hint}>and put right what came otherwise than meant.</span>
        </div>
      )}
      {meant !== null && <p role="status">{countWords(slips.length)}</p>}
      <ul className={styles.list}>
        {slips.slice(0, MOST).map((slip, at) => (
          <li key={`${slip.meantFrom} ${slip.fromMs}`} className={styles.row}>
            <SlipRow
              run={run}
              slip={slip}
              meant={meant ?? ''}
              names={names}
              isOpen={opened === at}
              onOpen={() => setOpened(opened === at ? null : at)}
            />
          </li>
        ))}
      </ul>
      {slips.length > MOST && <p className={styles.hint}>And {slips.length - MOST} more.</p>}
    </>
  );
}

interface SlipRowProps {
  readonly run: Run;
  readonly slip: Slip;
  readonly meant: string;
  readonly names: Names;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
}

function SlipRow({ run, slip, meant, names, isOpen, onOpen }: SlipRowProps) {
  const setCursor = useRehearsal((state) => state.setCursor);
  const cause = run.decisions[slip.causes[0] ?? -1];
  const at = cause?.t ?? run.items[slip.came[0]?.item ?? -1]?.t ?? Math.max(0, slip.fromMs);
  return (
    <>
      <button
        type="button"
        className={styles.plain}
        aria-expanded={isOpen}
        onClick={() => {
          setCursor(at);
          onOpen();
        }}
      >
        <span className={styles.strong}>{slipTitle(slip)}</span>
      </button>
      <p>{slipReason(run, slip, names)}</p>
      {isOpen && <Remedies run={run} slip={slip} meant={meant} names={names} />}
    </>
  );
}

function Remedies({ run, slip, meant, names }: Omit<SlipRowProps, 'isOpen' | 'onOpen'>) {
  const tryOut = useRehearsal((state) => state.tryOut);
  // The whole stream is played once for each setting that might help.
  const remedies = useMemo(() => remediesOf(run, meant, slip, names), [run, meant, slip, names]);
  if (remedies.length === 0)
    return <p className={styles.hint}>No single setting of the design would have prevented it.</p>;
  return (
    <>
      <p className={styles.hint}>Played again with it, this slip is gone:</p>
      {remedies.map(({ title, edit, slips }) => (
        <div key={title} className={styles.rowHead}>
          <span>
            {title} <span className={styles.hint}>{slipsWith(slips)}</span>
          </span>
          <Button onClick={() => tryOut({ title, edit })}>Try</Button>
        </div>
      ))}
    </>
  );
}
