import { useEffect, useRef, useState } from 'react';
import type { MeasuredChord } from '../../../../core/typist/measured.ts';
import { STANDARD_SEATS } from '../../../../core/typist/standard-seats.ts';
import { Button } from '../../../widgets/button.tsx';
import { CHORD_PROMPTS } from './chord-prompts.ts';
import { type Attempt, ChordTaker } from './chord-taker.ts';
import styles from './measure.module.css';
import type { Session } from './session.ts';
import { StandardKeys } from './standard-keys.tsx';

interface ChordsStepProps {
  /** Takes what is made. */
  readonly session: Session;
  /** What stands on a key of the keyboard at hand. */
  readonly legendOf: (code: string) => string;
  readonly onDone: () => void;
}

/** The second step: twenty chords, one after the other. */
export function ChordsStep({ session, legendOf, onDone }: ChordsStepProps) {
  const pad = useRef<HTMLButtonElement>(null);
  const taker = useRef(new ChordTaker());
  const [at, setAt] = useState(0);
  const [said, setSaid] = useState('');
  useEffect(() => pad.current?.focus(), []);
  const asked = CHORD_PROMPTS[at] ?? [];
  const names = asked.map(legendOf);
  const next = () => {
    if (at + 1 === CHORD_PROMPTS.length) onDone();
    else setAt(at + 1);
  };
  const took = (attempt: Attempt | null) => {
    if (attempt === null) return;
    setSaid(attemptWords(attempt, names, legendOf));
    if (attempt.came !== 'made') return;
    session.chords.push(attempt.chord);
    next();
  };
  return (
    <>
      <p>
        Now press these keys together as one chord, as you would on your own board, and let go. If your
        keyboard does not take three keys at once, leave that one out.
      </p>
      <button
        ref={pad}
        type="button"
        className={styles.pad}
        onKeyDown={(event) => {
          const { code, timeStamp, repeat, ctrlKey, metaKey, altKey } = event.nativeEvent;
          if (!STANDARD_SEATS.has(code) || ctrlKey || metaKey || altKey) return;
          // The browser would look for the character on the page, or press the button.
          event.preventDefault();
          if (repeat) return;
          session.chordTimes.push(timeStamp);
          took(taker.current.down(asked, code, timeStamp));
        }}
        onKeyUp={({ nativeEvent }) => {
          if (STANDARD_SEATS.has(nativeEvent.code)) took(taker.current.up(nativeEvent.code));
        }}
        onBlur={() => taker.current.forget()}
      >
        <span className={styles.asked}>
          {names.map((name) => (
            <kbd key={name}>{name}</kbd>
          ))}
        </span>
        <StandardKeys lit={asked} legendOf={legendOf} />
        <span className={styles.where}>
          {at + 1} of {CHORD_PROMPTS.length}
        </span>
        <span className={styles.focusHint}>Click here, so that your keys are heard</span>
      </button>
      <SpreadDots chords={session.chords} />
      <div className={styles.progress}>
        <p role="status">{said}</p>
        <Button
          tone="quiet"
          onClick={() => {
            next();
            pad.current?.focus();
          }}
        >
          Leave this one out
        </Button>
        <Button tone="quiet" onClick={onDone}>
          No more chords
        </Button>
      </div>
    </>
  );
}

function attemptWords(
  attempt: Attempt,
  names: readonly string[],
  legendOf: (code: string) => string,
): string {
  if (attempt.came === 'made') return `${Math.round(attempt.spreadMs)} ms from the first key to the last.`;
  if (attempt.came === 'other-key')
    return `That was ${legendOf(attempt.code)}. Once more: ${names.join(' and ')}.`;
  return `Those came one after the other. Once more: ${names.join(' and ')}, together.`;
}

const WIDEST_MS = 120;

/** The spreads so far on a line from 0 ms on. */
function SpreadDots({ chords }: { readonly chords: readonly MeasuredChord[] }) {
  const x = (ms: number) => 8 + (Math.min(ms, WIDEST_MS) / WIDEST_MS) * 384;
  return (
    <svg className={styles.dots} viewBox="0 0 412 36" aria-hidden="true">
      <path d="M8 18H392" />
      {[0, 40, 80, 120].map((ms) => (
        <text key={ms} x={x(ms)} y="34">
          {ms === 0 ? '0 ms' : ms}
        </text>
      ))}
      {chords.map(({ onsetsMs }, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: chords only ever come to the end
        <circle key={at} cx={x(onsetsMs.at(-1) ?? 0)} cy="12" r="4" />
      ))}
    </svg>
  );
}
