import { useEffect, useRef, useState } from 'react';
import { useTypist } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import styles from './measure.module.css';
import { ENOUGH_KEYSTROKES } from './measure-words.ts';
import { firstParagraph, PARAGRAPH_CHOICES, PARAGRAPHS } from './paragraphs.ts';
import type { TypingRecorder } from './typing-recorder.ts';

/** The first step: some three hundred keystrokes of text. What is typed stays in the field and goes with it. */
export function TypingStep({
  recorder,
  onDone,
}: {
  readonly recorder: TypingRecorder;
  readonly onDone: () => void;
}) {
  const { typed } = useTypist();
  const [choice, setChoice] = useState(() => firstParagraph(typed.choice));
  const [count, setCount] = useState(recorder.count);
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => field.current?.focus(), []);
  const [isMute, setMute] = useState(false);
  return (
    <>
      <p>
        Type as you always do, at your own pace, and correct what you would correct. Only when keys go down
        and come up is measured, sorted by length; what you type is not kept and goes nowhere.
      </p>
      <Choice label="Type" value={choice} options={PARAGRAPH_CHOICES} onChange={setChoice} />
      {choice !== 'own' && (
        <p className={styles.paragraph} lang={choice === 'german' ? 'de' : 'en'}>
          {PARAGRAPHS[choice]}
        </p>
      )}
      <textarea
        ref={field}
        className={styles.field}
        aria-label="Type here"
        rows={5}
        autoComplete="off"
        autoCorrect="off"
        autoCapitalize="off"
        spellCheck={false}
        onKeyDown={({ nativeEvent }) => {
          recorder.down(nativeEvent);
          setCount(recorder.count);
        }}
        onInput={({ currentTarget }) => setMute(recorder.count === 0 && currentTarget.value.length > 9)}
        onKeyUp={({ nativeEvent }) => recorder.up(nativeEvent)}
      />
      {isMute && (
        <p className={styles.warning}>
          This keyboard does not say which key goes down when, as those on screens do. It takes one with real
          keys.
        </p>
      )}
      <div className={styles.progress}>
        <progress
          aria-label="Keystrokes"
          max={ENOUGH_KEYSTROKES}
          value={Math.min(count, ENOUGH_KEYSTROKES)}
        />
        <span aria-live="off">
          {count} of {ENOUGH_KEYSTROKES} keystrokes
        </span>
        <Button
          tone={count >= ENOUGH_KEYSTROKES ? 'accent' : 'plain'}
          disabled={count === 0}
          onClick={onDone}
        >
          On to the chords
        </Button>
      </div>
    </>
  );
}
