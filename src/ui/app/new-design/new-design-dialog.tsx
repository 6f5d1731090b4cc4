import { type FormEvent, useEffect, useId, useState } from 'react';
import { ARRANGEMENTS } from '../../../core/board/arrangements.ts';
import { PITCHES } from '../../../core/board/pitches.ts';
import { LIMITS } from '../../../core/keymap/limits.ts';
import { useBoardDrafts } from '../../../store/board-drafts.ts';
import { loadHost, loadOfferedHosts, type OfferedHost } from '../../../store/hosts.ts';
import { designs } from '../../../store/keeping/use-designs.ts';
import { loadNeedLists } from '../../../store/need-lists.ts';
import { usePage } from '../../../store/page.ts';
import { starterDesign } from '../../../store/starter-design.ts';
import { Button } from '../../widgets/button.tsx';
import { Choice } from '../../widgets/choice.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { Select } from '../../widgets/select.tsx';
import { TextField } from '../../widgets/text-field.tsx';
import {
  type Answers,
  choicesOf,
  firstAnswers,
  hostKey,
  SYSTEMS,
  systemOf,
  withHost,
  withSystem,
} from './answers.ts';
import { BoardChoice } from './board-choice.tsx';
import { NeedListChoice } from './need-list-choice.tsx';
import styles from './new-design.module.css';

/** The button that goes on to the board: for another one than those on offer. */
const SHAPE = 'shape';

/** The value of the button by which a form was sent. */
function submitterOf(event: Event): string | null {
  return event instanceof SubmitEvent ? (event.submitter?.getAttribute('value') ?? null) : null;
}

/** The three questions of a new design: which board, which host layout, what you type. */
export function NewDesignDialog({ onClose }: { readonly onClose: () => void }) {
  const [answers, setAnswers] = useState(() => firstAnswers(systemOf(navigator.userAgent)));
  const [hosts, setHosts] = useState<readonly OfferedHost[]>([]);
  const [busy, setBusy] = useState(false);
  const form = useId();
  useEffect(() => {
    void loadOfferedHosts().then(setHosts);
  }, []);
  const change = (part: Partial<Answers>) => setAnswers((before) => ({ ...before, ...part }));
  const make = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const isToBeShaped = submitterOf(event.nativeEvent) === SHAPE;
    setBusy(true);
    const choices = choicesOf(answers);
    const [host, findList] = await Promise.all([loadHost(choices.host), loadNeedLists(answers.lists)]);
    await designs.getState().addDesign(starterDesign(choices, host, findList));
    if (isToBeShaped) {
      usePage.getState().showDesk('design');
      useBoardDrafts.getState().open();
    }
    onClose();
  };
  return (
    <Dialog
      title="New design"
      width="wide"
      onClose={onClose}
      footer={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button type="submit" form={form} value={SHAPE} disabled={busy || answers.name.trim() === ''}>
            Make it and shape the board…
          </Button>
          <Button type="submit" form={form} tone="accent" disabled={busy || answers.name.trim() === ''}>
            Make the design
          </Button>
        </>
      }
    >
      <form id={form} className={styles.form} onSubmit={(event) => void make(event)}>
        <TextField
          label="Name"
          value={answers.name}
          maxLength={LIMITS.nameLength}
          // The name that stands there is only a stand-in: typing is to put another in its place.
          onFocus={(event) => event.target.select()}
          onChange={(name) => change({ name })}
        />
        <Question number={1} title="Which board?">
          <BoardChoice board={answers.board} pitch={answers.pitch} onChange={(board) => change({ board })} />
          <Choice
            label="Distance from key to key"
            value={answers.pitch}
            options={PITCHES.map(({ id, title }) => ({ value: id, label: title }))}
            onChange={(pitch) => change({ pitch })}
          />
        </Question>
        <Question number={2} title="Which computer?">
          <Choice
            label="System"
            value={answers.system}
            options={SYSTEMS}
            onChange={(system) => setAnswers(withSystem(answers, system))}
          />
          <Select
            label="Host layout: how the computer is set to read keys"
            value={hostKey(answers.host)}
            options={hosts.map((host) => ({ value: hostKey(host), label: host.title }))}
            onChange={(key) => {
              const host = hosts.find((each) => hostKey(each) === key);
              if (host !== undefined) setAnswers(withHost(answers, host));
            }}
          />
          <Choice
            label="Letters start as"
            value={answers.arrangement}
            options={ARRANGEMENTS.map(({ id, title }) => ({ value: id, label: title }))}
            onChange={(arrangement) => change({ arrangement })}
          />
        </Question>
        <Question number={3} title="What do you type?">
          <NeedListChoice lists={answers.lists} onChange={(lists) => change({ lists })} />
          <TextField
            label="Other characters"
            hint="Letters and signs beyond the lists, one after another"
            value={answers.others}
            onChange={(others) => change({ others })}
            spellCheck={false}
            autoComplete="off"
          />
        </Question>
      </form>
    </Dialog>
  );
}

function Question({
  number,
  title,
  children,
}: {
  readonly number: number;
  readonly title: string;
  readonly children: React.ReactNode;
}) {
  return (
    <section className={styles.question}>
      <h3 className={styles.title}>
        <span className={styles.number}>{number}</span> {title}
      </h3>
      {children}
    </section>
  );
}
