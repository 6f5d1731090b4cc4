import { useState } from 'react';
import { handWork, startedFrom, withoutHandWork } from '../../../../core/board/draft.ts';
import { atPitch } from '../../../../core/board/pitches.ts';
import { READY_BOARDS } from '../../../../core/board/ready-boards.ts';
import { LIMITS } from '../../../../core/keymap/limits.ts';
import type { Hand } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { Button } from '../../../widgets/button.tsx';
import { CommitField } from '../../../widgets/commit-field.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { Select } from '../../../widgets/select.tsx';
import { CapsPanel } from './caps-panel.tsx';
import { ColumnsPanel } from './columns-panel.tsx';
import { HalvesPanel } from './halves-panel.tsx';
import styles from './panel.module.css';
import { ThumbPanel } from './thumb-panel.tsx';
import { useBoardWork } from './use-board-work.ts';
import { shapingOf } from './use-shaping.ts';

/** The board in parameters: what to begin with, columns, thumb keys, halves, caps. */
export function ShapePanel() {
  const { draft, shown } = useBoardWork();
  const [hand, setHand] = useState<Hand>('right');
  const { madeFrom } = shown.board;
  const shaping = shapingOf(draft);
  const rename = useBoardDrafts((drafts) => drafts.change);
  return (
    <div className={styles.panel}>
      <CommitField
        label="Name of the board"
        value={draft.board.name}
        maxLength={LIMITS.nameLength}
        problemOf={(name) => (name === '' ? 'A board has a name.' : undefined)}
        onCommit={(name) => rename('Rename the board', { ...draft, board: { ...draft.board, name } })}
      />
      <BeginWith />
      {madeFrom === undefined ? (
        <p className={styles.quiet}>
          The keys of this board lie where they were put by hand. Begin with a ready board to shape one by
          numbers.
        </p>
      ) : (
        <>
          <HandWork />
          <Disclosure title="Halves" startOpen>
            <HalvesPanel madeFrom={madeFrom} shaping={shaping} hand={hand} onHand={setHand} />
          </Disclosure>
          <Disclosure title="Columns" startOpen>
            <ColumnsPanel madeFrom={madeFrom} shaping={shaping} hand={hand} />
          </Disclosure>
          <Disclosure title="Thumb keys">
            <ThumbPanel madeFrom={madeFrom} shaping={shaping} hand={hand} />
          </Disclosure>
          <Disclosure title="Caps and pitch">
            <CapsPanel madeFrom={madeFrom} shaping={shaping} />
          </Disclosure>
        </>
      )}
    </div>
  );
}

/** Ready boards to begin anew with; what is bound goes along as far as it has a place. */
function BeginWith() {
  const { draft } = useBoardWork();
  const change = useBoardDrafts((drafts) => drafts.change);
  const begin = (id: string) => {
    const ready = READY_BOARDS.find((each) => each.id === id);
    const { madeFrom } = draft.board;
    if (ready === undefined) return;
    const pitch = madeFrom && { xMm: madeFrom.pitchXMm, yMm: madeFrom.pitchYMm };
    const made = pitch === undefined ? ready.madeFrom : atPitch(ready.madeFrom, pitch);
    change(`Begin with ${ready.title}`, startedFrom(draft, made), []);
  };
  return (
    <Select
      label="Begin anew with a ready board"
      value=""
      options={[
        { value: '', label: 'Choose a board…' },
        ...READY_BOARDS.map(({ id, title }) => ({ value: id, label: title })),
      ]}
      onChange={begin}
    />
  );
}

/** How far the board is from what its parameters say, and the way back. */
function HandWork() {
  const { draft } = useBoardWork();
  const change = useBoardDrafts((drafts) => drafts.change);
  const { keys, missing } = handWork(draft.board);
  if (keys.length === 0 && missing === 0) return null;
  const parts = [
    ...(keys.length === 0
      ? []
      : [`${keys.length === 1 ? 'One key is' : `${keys.length} keys are`} placed by hand`]),
    ...(missing === 0 ? [] : [`${missing === 1 ? 'one was' : `${missing} were`} taken away`]),
  ];
  return (
    <div className={styles.handWork}>
      <p>{parts.join(', ')}. That stays when the numbers change.</p>
      <Button onClick={() => change('Put back what was done by hand', withoutHandWork(draft))}>
        Put back
      </Button>
    </div>
  );
}
