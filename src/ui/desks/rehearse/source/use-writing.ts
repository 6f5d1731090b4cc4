import { create } from 'zustand';
import { typedBy } from '../../../../core/rehearse/typed-by.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { useTried } from '../../../../store/rehearse/use-runs.ts';
import { useTypist } from '../../../../store/typist.ts';
import { SAMPLE_TEXT } from './source-words.ts';
import { type Writer, type WriterChoices, writerOf } from './writer.ts';

interface Choices extends WriterChoices {
  readonly text: string;
  readonly seed: number;
  /** What of the text written last the design could not type. */
  readonly missing: readonly string[];
}

interface Writing extends Choices {
  set(change: Partial<Choices>): void;
}

/** What is to be written and by whom; it outlives a look at another desk. */
const useChoices = create<Writing>()((set) => ({
  text: SAMPLE_TEXT,
  who: null,
  wpm: 60,
  spread: 1,
  seed: 1,
  missing: [],
  set: (change) => set(change),
}));

/** What is to be written, by whom, and how it gets onto the time line. */
export function useWriting(): Writing & {
  readonly writer: Writer;
  readonly hasMeasured: boolean;
  play(seed: number): void;
} {
  const choices = useChoices();
  const { keymap, host } = useTried();
  const { typed, measured } = useTypist();
  const take = useRehearsal((state) => state.take);
  const writer = writerOf(choices, measured);
  const play = (seed: number) => {
    const { person, name, made } = writer;
    const { events, meant, missing } = typedBy(keymap, host, choices.text, { person, seed }, typed.counts);
    choices.set({ seed, missing });
    take({ name, made: made(seed), meant, events });
  };
  return { ...choices, writer, hasMeasured: measured !== null, play };
}
