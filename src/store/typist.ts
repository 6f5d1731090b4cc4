import { useEffect, useSyncExternalStore } from 'react';
import { useStore } from 'zustand';
import type { RunCounts } from '../core/needs/counts-runs.ts';
import { useBench } from './bench.ts';
import { indexedDbOrMemory } from './keeping/key-value.ts';
import { makeTypist, type TextChoice, type TextWish, type TypistState } from './make-typist.ts';
import { makeMeasured } from './measured/make-measured.ts';
import { useOwnText } from './own-text/own-text.ts';
import { RunTexts } from './run-texts.ts';
import { textOfLists } from './text-of-design.ts';

const { values } = indexedDbOrMemory({ database: 'handful typist', store: 'choices' });

/** The page's typist: speed, text and limits as chosen. `setMeasured` is for whoever measures. */
export const typist = makeTypist(values);

const measuredValues = indexedDbOrMemory({ database: 'handful measured typist', store: 'measured' }).values;

/** What was measured of the typist at this computer; whoever it makes is handed in to `typist`. */
export const measured = makeMeasured(measuredValues, typist.getState().setMeasured, () => Date.now());

const texts = new RunTexts();

/** The text whose accidents are estimated. */
export interface TypistText {
  readonly choice: TextChoice;
  /** What to call it: the name of a ready text, or of the typist's own files. */
  readonly title: string;
  /** Null while the counts are on their way, and where they cannot be had: then `why` says so. */
  readonly counts: RunCounts | null;
  readonly why?: string;
}

/** The typist with the text they type; everything is taken up from where it is kept when this is first used. */
export interface Typist extends TypistState {
  readonly typed: TypistText;
  /** What is chosen for the text, or stands there until something is. */
  readonly wish: TextWish;
  /** The text that the open design's languages ask for. */
  readonly ofDesign: TextChoice;
  /** Whether there is an own text to choose. */
  readonly hasOwnText: boolean;
}

/** Whose accidents are estimated, and on what text. */
export function useTypist(): Typist {
  useEffect(() => {
    void typist.getState().start();
    void measured.getState().start();
  }, []);
  const state = useStore(typist);
  const own = useOwnText(({ text }) => text);
  const ofDesign = useBench(({ keymap }) => textOfLists(keymap.needs?.lists ?? []));
  const chosen = state.text === 'own' && own === null ? null : state.text;
  const wish: TextWish = chosen ?? (own === null ? 'design' : 'own');
  const name: TextChoice = wish === 'design' ? ofDesign : wish;
  const known = useSyncExternalStore(texts.subscribe, () => (name === 'own' ? null : texts.known(name)));
  const typed: TypistText =
    name === 'own' && own !== null
      ? { choice: 'own', title: own.name, counts: own.runs }
      : known?.state === 'ready'
        ? { choice: name, title: known.title, counts: known.counts }
        : {
            choice: name,
            title: name,
            counts: null,
            ...(known?.state === 'missing' ? { why: known.why } : {}),
          };
  return { ...state, typed, wish, ofDesign, hasOwnText: own !== null };
}
