import { useState } from 'react';
import { type Column, rowsOf, withColumn, withoutColumn, withRows } from '../../../../core/board/columns.ts';
import { withHalf } from '../../../../core/board/halves.ts';
import { type Half, halfOf } from '../../../../core/board/parametric.ts';
import type { Hand, MadeFrom } from '../../../../core/keymap/types.ts';
import { Button } from '../../../widgets/button.tsx';
import { NumberField } from '../../../widgets/number-field.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import { FingerMark } from './finger-mark.tsx';
import styles from './panel.module.css';
import { ShapeSliders } from './shape-slider.tsx';
import type { Shaping } from './use-shaping.ts';

const FINGERS = [
  { value: 'index', label: 'Index finger' },
  { value: 'middle', label: 'Middle finger' },
  { value: 'ring', label: 'Ring finger' },
  { value: 'little', label: 'Little finger' },
] as const;

/** Rows on either side of the home row; all of them are six at most. */
const ROWS = [
  { side: 'above', other: 'below', label: 'Above home row' },
  { side: 'below', other: 'above', label: 'Below home row' },
] as const;

/** The columns of a half: one of them is chosen from the strip, its numbers stand below. */
export function ColumnsPanel({
  madeFrom,
  shaping,
  hand,
}: {
  readonly madeFrom: MadeFrom;
  readonly shaping: Shaping;
  readonly hand: Hand;
}) {
  const [chosen, choose] = useState(1);
  const half = halfOf(madeFrom, hand);
  const index = Math.min(chosen, half.columns.length - 1);
  const commit = (title: string, columns: readonly Column[]) =>
    shaping.commit(title, withHalf(madeFrom, hand, { columns }));
  const add = (end: 'inner' | 'outer') => {
    commit(`Add an ${end} column`, withColumn(half.columns, end));
    choose(end === 'inner' ? 0 : half.columns.length);
  };
  const full = half.columns.length >= 8;
  return (
    <div className={styles.fields}>
      <ColumnStrip half={half} hand={hand} index={index} onChoose={choose} />
      <div className={styles.rowOfButtons}>
        <Button disabled={full} aria-label="Add an inner column" onClick={() => add('inner')}>
          + inner
        </Button>
        <Button disabled={full} aria-label="Add an outer column" onClick={() => add('outer')}>
          + outer
        </Button>
        <Button
          disabled={half.columns.length === 1}
          aria-label="Remove this column"
          onClick={() => commit('Remove a column', withoutColumn(half, index))}
        >
          Remove
        </Button>
      </div>
      <ColumnFields madeFrom={madeFrom} shaping={shaping} hand={hand} half={half} index={index} />
    </div>
  );
}

/** The columns side by side as they lie, inner one towards the other hand: whose they are and how many keys. */
function ColumnStrip({
  half,
  hand,
  index,
  onChoose,
}: {
  readonly half: Half;
  readonly hand: Hand;
  readonly index: number;
  readonly onChoose: (index: number) => void;
}) {
  const buttons = half.columns.map((column, at) => ({ column, at }));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields of a form
    <div role="group" aria-label="Columns" className={styles.strip}>
      {(hand === 'left' ? buttons.toReversed() : buttons).map(({ column, at }) => (
        <button
          key={at}
          type="button"
          aria-pressed={at === index}
          aria-label={`Column ${at + 1} from the middle, ${column.finger} finger, ${column.keys} keys`}
          className={styles.stripColumn}
          onClick={() => onChoose(at)}
        >
          <svg viewBox="-3.4 -3 6.8 6" aria-hidden="true">
            <FingerMark finger={column.finger} hand={hand} />
          </svg>
          <span>{column.keys}</span>
        </button>
      ))}
    </div>
  );
}

function ColumnFields({
  madeFrom,
  shaping,
  hand,
  half,
  index,
}: {
  readonly madeFrom: MadeFrom;
  readonly shaping: Shaping;
  readonly hand: Hand;
  readonly half: Half;
  readonly index: number;
}) {
  const column = half.columns[index];
  if (column === undefined) return null;
  const rows = rowsOf(half, index);
  const made = (next: Partial<Column>) =>
    withHalf(madeFrom, hand, {
      columns: half.columns.map((each, at) => (at === index ? { ...column, ...next } : each)),
    });
  const setRows = (next: { above: number; below: number }) => {
    const changed = withRows(half, index, next);
    if (changed !== undefined) shaping.commit('Change the rows of a column', made(changed));
  };
  return (
    <>
      <Select
        label="Pressed by the"
        value={column.finger}
        options={FINGERS}
        onChange={(finger) => shaping.commit('Give a column to another finger', made({ finger }))}
      />
      <div className={styles.pair}>
        {ROWS.map(({ side, other, label }) => (
          <NumberField
            key={side}
            label={label}
            value={rows[side]}
            min={0}
            max={5 - rows[other]}
            step={1}
            onCommit={(count) => setRows({ ...rows, [side]: Math.round(count) })}
          />
        ))}
      </div>
      <Switch
        label="The finger rests here"
        on={column.homeRow !== null}
        onChange={(on) =>
          shaping.commit('Change where a finger rests', restingIn(madeFrom, hand, half, index, on))
        }
      />
      <ShapeSliders
        shaping={shaping}
        parameters={[
          {
            label: 'Stagger, towards you',
            unit: 'mm',
            value: column.staggerMm,
            limits: [-60, 60],
            step: 0.5,
            made: (staggerMm) => made({ staggerMm }),
          },
          {
            label: 'Splay, outwards',
            unit: '°',
            value: column.splayDeg,
            limits: [-45, 45],
            step: 0.5,
            made: (splayDeg) => made({ splayDeg }),
          },
        ]}
      />
    </>
  );
}

/** A finger rests in one column: its home moves over from another one. */
function restingIn(madeFrom: MadeFrom, hand: Hand, half: Half, index: number, on: boolean): MadeFrom {
  const finger = half.columns[index]?.finger;
  const { above } = rowsOf(half, index);
  return withHalf(madeFrom, hand, {
    columns: half.columns.map((each, at) => {
      if (at === index) return { ...each, homeRow: on ? above : null };
      return on && each.finger === finger ? { ...each, homeRow: null } : each;
    }),
  });
}
