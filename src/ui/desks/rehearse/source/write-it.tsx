import { Button } from '../../../widgets/button.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Slider } from '../../../widgets/slider.tsx';
import styles from '../rehearse.module.css';
import { TextArea } from '../text-area.tsx';
import { missingWords, SAMPLE_TEXT, SPREADS, takeWords, writerOptions } from './source-words.ts';
import { useWriting } from './use-writing.ts';

/** A text is turned into presses by the cheapest routes and a typist: one of a chosen speed, or the measured one. */
export function WriteIt() {
  const { text, seed, missing, writer, hasMeasured, play, set } = useWriting();
  const isEmpty = text.trim() === '';
  return (
    <>
      <TextArea
        label="Text to write"
        value={text}
        onChange={(value) => set({ text: value })}
        placeholder={SAMPLE_TEXT}
      />
      {missing.length > 0 && <p className={styles.problem}>{missingWords(missing)}</p>}
      {hasMeasured && (
        <Select
          label="Typist"
          value={writer.who}
          options={writerOptions(writer.who === 'measured' ? writer.person.parameters.wpm : null)}
          onChange={(who) => set({ who })}
        />
      )}
      {writer.who === 'measured' ? (
        <p className={styles.hint}>
          Speed, rhythm, how long keys are down and how far apart a chord’s keys come are your own, as you
          were measured on the design desk.
        </p>
      ) : (
        <OfASpeed />
      )}
      <div className={styles.buttons}>
        <Button tone="accent" disabled={isEmpty} onClick={() => play(seed)}>
          Play it
        </Button>
        <Button disabled={isEmpty} onClick={() => play(seed + 1)}>
          {writer.who === 'measured' ? 'Another take' : 'Another typist'}
        </Button>
      </div>
      <p className={styles.hint}>{takeWords(writer.who, seed)}</p>
    </>
  );
}

function OfASpeed() {
  const { wpm, spread, set } = useWriting();
  return (
    <>
      <Slider
        label="Speed of the typist"
        unit="wpm"
        value={wpm}
        min={15}
        max={140}
        step={5}
        onCommit={(value) => set({ wpm: value })}
      />
      <p className={styles.hint}>
        Words a minute as in the study that the typist comes from: pauses count, so the keys themselves follow
        each other somewhat faster.
      </p>
      <Select
        label="Hands on chords"
        value={String(spread)}
        options={SPREADS}
        onChange={(value) => set({ spread: Number(value) })}
      />
    </>
  );
}
