import { useState } from 'react';
import { handWork, startedFrom, withoutHandWork } from '../../../../core/board/draft.ts';
import { withMirroredLeft, withOwnLeft } from '../../../../core/board/halves.ts';
import { atPitch, PITCHES } from '../../../../core/board/pitches.ts';
import { READY_BOARDS } from '../../../../core/board/ready-boards.ts';
import { LIMITS } from '../../../../core/keymap/limits.ts';
import type { Hand, MadeFrom } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { CommitField } from '../../../widgets/commit-field.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { Select } from '../../../widgets/select.tsx';
import { ColumnsPanel } from './columns-panel.tsx';
import styles from './panel.module.css';
import { ShapeSlider } from './shape-slider.tsx';
import { ThumbPanel } from './thumb-panel.tsx';
import { useBoardWork } from './use-board-work.ts';
import { type Shaping, shapingOf } from './use-shaping.ts';

const MIRRORED = [
  { value: 'mirrored', label: 'Mirrored' },
  { value: 'own', label: 'Each its own' },
] as const;

const HANDS = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
] as const;

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

function HalvesPanel({
  madeFrom,
  shaping,
  hand,
  onHand,
}: {
  readonly madeFrom: MadeFrom;
  readonly shaping: Shaping;
  readonly hand: Hand;
  readonly onHand: (hand: Hand) => void;
}) {
  const { left } = madeFrom;
  return (
    <div className={styles.fields}>
      <Choice
        label="Shape of the halves"
        value={left === undefined ? 'mirrored' : 'own'}
        options={MIRRORED}
        onChange={(how) =>
          how === 'own'
            ? shaping.commit('Give each half its own shape', withOwnLeft(madeFrom))
            : shaping.commit('Mirror the right half', withMirroredLeft(madeFrom))
        }
      />
      {left !== undefined && (
        <Choice label="The numbers below are of the half" value={hand} options={HANDS} onChange={onHand} />
      )}
      <ShapeSlider
        label="Gap between the halves"
        unit="mm"
        value={madeFrom.gapMm}
        limits={[0, 600]}
        step={1}
        shaping={shaping}
        made={(gapMm) => ({ ...madeFrom, gapMm })}
      />
      {left === undefined ? (
        <ShapeSlider
          label="Turn of the halves"
          unit="°"
          value={madeFrom.turnDeg}
          limits={[-45, 45]}
          step={0.5}
          shaping={shaping}
          made={(turnDeg) => ({ ...madeFrom, turnDeg })}
        />
      ) : (
        <OwnTurns madeFrom={madeFrom} left={left} shaping={shaping} />
      )}
      <p className={styles.quiet}>A turn below 0 brings the tops together, above 0 the thumbs.</p>
    </div>
  );
}

function OwnTurns({
  madeFrom,
  left,
  shaping,
}: {
  readonly madeFrom: MadeFrom;
  readonly left: NonNullable<MadeFrom['left']>;
  readonly shaping: Shaping;
}) {
  return (
    <>
      <ShapeSlider
        label="Turn of the left half"
        unit="°"
        value={left.turnDeg}
        limits={[-45, 45]}
        step={0.5}
        shaping={shaping}
        made={(turnDeg) => ({ ...madeFrom, left: { ...left, turnDeg } })}
      />
      <ShapeSlider
        label="Turn of the right half"
        unit="°"
        value={madeFrom.turnDeg}
        limits={[-45, 45]}
        step={0.5}
        shaping={shaping}
        made={(turnDeg) => ({ ...madeFrom, turnDeg })}
      />
      <ShapeSlider
        label="Left half nearer to you by"
        unit="mm"
        value={left.downMm}
        limits={[-150, 150]}
        step={1}
        shaping={shaping}
        made={(downMm) => ({ ...madeFrom, left: { ...left, downMm } })}
      />
    </>
  );
}

function CapsPanel({ madeFrom, shaping }: { readonly madeFrom: MadeFrom; readonly shaping: Shaping }) {
  const pitch = PITCHES.find(({ xMm, yMm }) => xMm === madeFrom.pitchXMm && yMm === madeFrom.pitchYMm);
  return (
    <div className={styles.fields}>
      <Choice
        label="Distance from key to key"
        value={pitch?.id ?? ''}
        options={PITCHES.map(({ id, title }) => ({ value: id, label: title }))}
        onChange={(id) => {
          const chosen = PITCHES.find((each) => each.id === id);
          if (chosen !== undefined) shaping.commit('Change the pitch', atPitch(madeFrom, chosen));
        }}
      />
      <ShapeSlider
        label="Pitch across"
        unit="mm"
        value={madeFrom.pitchXMm}
        limits={[10, 40]}
        step={0.05}
        shaping={shaping}
        made={(pitchXMm) => ({ ...madeFrom, pitchXMm })}
      />
      <ShapeSlider
        label="Pitch down"
        unit="mm"
        value={madeFrom.pitchYMm}
        limits={[10, 40]}
        step={0.05}
        shaping={shaping}
        made={(pitchYMm) => ({ ...madeFrom, pitchYMm })}
      />
      <ShapeSlider
        label="Gap between caps"
        unit="mm"
        value={madeFrom.capGapMm}
        limits={[0, 5]}
        step={0.05}
        shaping={shaping}
        made={(capGapMm) => ({ ...madeFrom, capGapMm })}
      />
    </div>
  );
}
