import { useMemo, useRef, useState } from 'react';
import { type Comparison, compareRuns } from '../../../core/rehearse/compare.ts';
import { namesOf } from '../../../core/rehearse/key-words.ts';
import type { Run } from '../../../core/rehearse/run.ts';
import { type ShownText, shownText } from '../../../core/rehearse/shown-text.ts';
import type { Slip } from '../../../core/rehearse/slips.ts';
import { useRehearsal } from '../../../store/rehearse/rehearsal.ts';
import { slipsIn, useComparedRun, usePlayed, useTried } from '../../../store/rehearse/use-runs.ts';
import { Button } from '../../widgets/button.tsx';
import { useFocusKept } from '../../widgets/use-focus-kept.ts';
import { OutText } from './out-text.tsx';
import { Readout } from './readout.tsx';
import styles from './rehearse.module.css';
import { useWriting } from './source/use-writing.ts';
import { StreamInWords } from './stream-in-words.tsx';
import type { Stretch } from './time-line/draw.ts';
import { TimeLine } from './time-line/time-line.tsx';

/** What comes out, the time line, and the state at the cursor. */
export function MainPart() {
  const { stream, live, cursorMs, setCursor } = useRehearsal();
  const [inWords, setInWords] = useState(false);
  const played = usePlayed();
  const compared = useComparedRun();
  const { keymap, host } = useTried();
  const run = live?.run ?? (played?.ok ? played.value : null);
  const names = useMemo(
    () => namesOf(run?.keymap ?? keymap, run?.host ?? host),
    [run?.keymap, run?.host, keymap, host],
  );
  const other = live === null && compared?.ok && compared.value !== run ? compared.value : null;
  const apart = useMemo(
    () => (run === null || other === null ? [] : differencesOf(compareRuns(run, other))),
    [run, other],
  );
  const out = useRef<HTMLElement>(null);
  useFocusKept(live !== null ? 'live' : run === null ? 'none' : 'still', () => out.current);
  if (run === null) {
    if (played === null || played.ok) return <Empty />;
    return <Refused reason={played.problem.reason} />;
  }
  const meant = live === null ? (stream?.meant ?? null) : null;
  const slips = slipsIn(run, meant);
  const text = live === null ? shownText(run.items) : newestText(run);
  return (
    <>
      <OutText
        field={out}
        text={text}
        slips={slips}
        isLive={live !== null}
        onSlip={(slip) => setCursor(slipStart(run, slip))}
      />
      {inWords && live === null ? (
        <StreamInWords run={run} names={names} cursorMs={cursorMs ?? 0} onCursor={setCursor} />
      ) : (
        <TimeLine
          run={run}
          subject={live === null ? stream?.events : 'live'}
          names={names}
          other={other}
          slips={slips.map((slip) => stretchOf(run, slip))}
          differences={apart}
          cursorMs={cursorMs}
          onCursor={setCursor}
          follows={live !== null}
        />
      )}
      {live === null && (
        <Readout
          run={run}
          names={names}
          cursorMs={cursorMs ?? 0}
          inWords={inWords}
          onInWords={() => setInWords(!inWords)}
        />
      )}
    </>
  );
}

/** So much of the text stands in the field while it grows; laying out more of it at each key takes long. */
const NEWEST = { items: 1500, tokens: 600 };

function newestText({ items }: Run): ShownText {
  const { tokens, takenBack } = shownText(items.slice(-NEWEST.items));
  return { tokens: tokens.slice(-NEWEST.tokens), takenBack };
}

function differencesOf({ differences }: Comparison): readonly Stretch[] {
  return differences.map(({ fromMs, toMs }) => ({ fromMs, toMs: toMs + 40 }));
}

/** The presses of a slip from the first key that went down, without the free time about them. */
function stretchOf(run: Run, slip: Slip): Stretch {
  const at = slipStart(run, slip);
  const ends = slip.came.map(({ item }) => run.items[item]?.t ?? at);
  const downs = slip.came.map(({ item }) => run.decisions[run.items[item]?.cause ?? -1]?.data?.since ?? at);
  const since = run.decisions[slip.causes[0] ?? -1]?.data?.since ?? at;
  return { fromMs: Math.min(at, since, ...downs), toMs: Math.max(at, ...ends) };
}

/** Where a slip begins: at its likeliest cause, else at what came, else where it should have come. */
function slipStart(run: Run, { causes, came, fromMs, toMs }: Slip): number {
  const cause = run.decisions[causes[0] ?? -1];
  if (cause !== undefined) return cause.t;
  const item = run.items[came[0]?.item ?? -1];
  if (item !== undefined) return item.t;
  return Number.isFinite(fromMs) ? fromMs : Math.min(toMs, run.endMs);
}

function Empty() {
  const { seed, play } = useWriting();
  return (
    <div className={styles.empty}>
      <svg className={styles.trace} viewBox="0 0 360 96" aria-hidden="true">
        <g fill="none" stroke="var(--hairline)">
          <path d="M0 24h360M0 48h360M0 72h360M60 0v96M120 0v96M180 0v96M240 0v96M300 0v96" />
        </g>
        <g fill="var(--accent)">
          <rect x="24" y="17" width="58" height="14" rx="1" />
          <rect x="246" y="65" width="66" height="14" rx="1" />
        </g>
        <g fill="var(--layer-0)" stroke="var(--ink)">
          <rect x="150" y="41" width="52" height="14" />
          <rect x="164" y="65" width="48" height="14" />
        </g>
        <path d="M164 48v24" stroke="var(--ink)" strokeWidth="1.5" />
      </svg>
      <p>
        See what a press really does, to the millisecond. Write a text and let a typist type it, or type it
        yourself on the keyboard at hand.
      </p>
      <Button tone="accent" onClick={() => play(seed)}>
        Play the sample text
      </Button>
    </div>
  );
}

function Refused({ reason }: { readonly reason: string }) {
  const take = useRehearsal((state) => state.take);
  return (
    <div className={styles.empty} role="alert">
      <p>These presses cannot be played on this design. {reason}</p>
      <Button onClick={() => take(null)}>Clear the time line</Button>
    </div>
  );
}
