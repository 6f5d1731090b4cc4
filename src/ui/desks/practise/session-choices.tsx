import type { Board } from '../../../core/keymap/types.ts';
import { NEED_GROUPS } from '../../../core/practice/groups.ts';
import type { PracticeInput } from '../../../core/practice/session.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import { type HintChoice, SESSION_MINUTES } from '../../../store/practice/practice-choices.ts';
import { overlaysFor, useChosenOverlay, useKeptOverlays } from '../../../store/rehearse/kept-overlays.ts';
import { textOptions } from '../../../store/text-options.ts';
import { useTypist } from '../../../store/typist.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import { Select } from '../../widgets/select.tsx';
import styles from './practise.module.css';
import { choicesWords, GROUP_TITLES } from './practise-words.ts';

const MINUTES = SESSION_MINUTES.map((minutes) => ({ value: String(minutes), label: `${minutes} minutes` }));
const GROUPS = [
  { value: 'all', label: 'Everything' },
  ...NEED_GROUPS.map((value) => ({ value, label: GROUP_TITLES[value] })),
] as const;
const HINTS: readonly { readonly value: HintChoice; readonly label: string }[] = [
  { value: 'after-hesitation', label: 'After hesitation' },
  { value: 'when-asked', label: 'Only when asked for' },
];
const INPUTS: readonly { readonly value: PracticeInput; readonly label: string }[] = [
  { value: 'engine', label: 'Any keyboard, laid onto the board' },
  { value: 'board', label: 'The real board' },
];

/** How the next session is to be: a line that opens. */
export function SessionChoices({ board }: { readonly board: Board }) {
  const choices = usePractice((state) => state.choices);
  const choose = usePractice((state) => state.choose);
  const { wish, ofDesign, hasOwnText, setText } = useTypist();
  const { overlay, choose: chooseOverlay } = useChosenOverlay(board);
  const overlays = overlaysFor(board, useKeptOverlays().things);
  return (
    <Disclosure title={choicesWords(choices)}>
      <div className={styles.choices}>
        <Select
          label="What"
          value={choices.group ?? 'all'}
          options={GROUPS}
          onChange={(value) => choose({ group: value === 'all' ? null : value })}
        />
        <Select
          label="As it stands in"
          value={wish}
          options={textOptions(hasOwnText, ofDesign)}
          onChange={setText}
        />
        <Select
          label="How long"
          value={String(choices.minutes)}
          options={MINUTES}
          onChange={(value) => choose({ minutes: Number(value) })}
        />
        <Select label="Hints" value={choices.hints} options={HINTS} onChange={(hints) => choose({ hints })} />
        <Select
          label="Typed on"
          value={choices.input}
          options={INPUTS}
          onChange={(input) => choose({ input })}
        />
        {choices.input === 'engine' && (
          <Select
            label="Its keys lie"
            value={overlay.id}
            options={overlays.map(({ id, title }) => ({ value: id, label: title }))}
            onChange={chooseOverlay}
          />
        )}
      </div>
      <p className={styles.quiet}>
        {choices.input === 'engine'
          ? 'Its keys stand for the keys of the board and go through the timing engine: the design can be learnt before the board exists, and a slip is told exactly.'
          : 'The board sends results, not presses: what went wrong is then told as likely, and a press that sends nothing is not seen. Shortcuts and keys that the browser or the system keeps for itself are left out: they can be practised on any keyboard.'}
      </p>
    </Disclosure>
  );
}
