import { useState } from 'react';
import { typedBy } from '../../../../core/rehearse/typed-by.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { useTried } from '../../../../store/rehearse/use-runs.ts';
import { useTypist } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Slider } from '../../../widgets/slider.tsx';
import styles from '../rehearse.module.css';
import { TextArea } from '../text-area.tsx';
import { missingWords, SAMPLE_TEXT, SPREADS } from './source-words.ts';
import { useWriting } from './use-writing.ts';

/** A text is turned into presses by the cheapest routes and a typist of a chosen speed. */
export function WriteIt() {
  const { keymap, host } = useTried();
  const { typed } = useTypist();
  const take = useRehearsal((state) => state.take);
  const { text, wpm, spread, seed, set } = useWriting();
  const [missing, setMissing] = useState<readonly string[]>([]);
  const play = (nextSeed: number) => {
    const typing = { wpm, spread, seed: nextSeed };
    const written = typedBy(keymap, host, text, typing, typed.counts);
    setMissing(written.missing);
    set({ seed: nextSeed });
    const name = `Written at ${wpm} words a minute`;
    take({ name, made: { how: 'written', ...typing }, meant: written.meant, events: written.events });
  };
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
      <div className={styles.buttons}>
        <Button tone="accent" disabled={isEmpty} onClick={() => play(seed)}>
          Play it
        </Button>
        <Button disabled={isEmpty} onClick={() => play(seed + 1)}>
          Another typist
        </Button>
      </div>
      <p className={styles.hint}>Typist {seed}: the same number types the same way again.</p>
    </>
  );
}
