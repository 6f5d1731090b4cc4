import { useDraggable } from '@dnd-kit/core';
import type { ReactNode } from 'react';
import { useBench } from '../../../../store/bench.ts';
import type { Carried } from '../../../../store/bench-state.ts';
import { focusBoard } from '../../../board/key-element.ts';
import styles from './chip.module.css';

interface ChipProps {
  /** Unique among everything that can be dragged. */
  readonly id: string;
  readonly glyph: string;
  readonly carried: Carried;
  /** Read out and shown on hovering: the name, how it stands, what it costs. */
  readonly label: string;
  readonly status?: 'missing' | 'clumsy' | 'reached';
  /** Signs under the glyph. */
  readonly marks?: ReactNode;
  /** The one chip of its group that Tab stops at. */
  readonly tabStop: boolean;
  readonly onLookAt?: (() => void) | undefined;
  readonly onLookAway?: (() => void) | undefined;
}

/**
 * Something that can be put on a key: dragged there, or picked up by a click (or Enter) and put down by the next one.
 */
export function Chip({ id, glyph, carried, label, status, marks, tabStop, onLookAt, onLookAway }: ChipProps) {
  const { setNodeRef, listeners, isDragging } = useDraggable({ id, data: carried });
  const inHand = useBench((bench) => sameThing(bench.carried, carried));
  const carry = useBench((bench) => bench.carry);
  return (
    <button
      ref={setNodeRef}
      {...listeners}
      type="button"
      data-roving
      data-chip={id}
      data-status={status}
      data-dragging={isDragging}
      data-cells={cellsOf(glyph)}
      className={styles.chip}
      tabIndex={tabStop ? 0 : -1}
      aria-pressed={inHand}
      // What is seen must be part of what is said, for those who speak to their computer (WCAG 2.5.3).
      aria-label={label.startsWith(`${glyph},`) ? label : `${glyph}, ${label}`}
      title={label}
      onClick={(event) => {
        carry(inHand ? null : carried);
        // Picked up without a pointer: the arrows go on from the board.
        if (event.detail === 0 && !inHand) focusBoard();
      }}
      onFocus={onLookAt}
      onBlur={onLookAway}
      onPointerEnter={onLookAt}
      onPointerLeave={onLookAway}
    >
      <span className={styles.glyph}>{glyph}</span>
      {marks !== undefined && (
        <span className={styles.marks} aria-hidden="true">
          {marks}
        </span>
      )}
    </button>
  );
}

/** How many cells of the chips' grid it takes for a glyph to be read, by its length in characters. */
function cellsOf(glyph: string): '1' | '2' | '3' | 'all' {
  const { length } = [...glyph];
  if (length <= 1) return '1';
  if (length <= 4) return '2';
  return length <= 21 ? '3' : 'all';
}

/** Whether two carried things are the same, whoever made them. */
function sameThing(one: Carried | null, other: Carried): boolean {
  return one !== null && one.label === other.label && JSON.stringify(one) === JSON.stringify(other);
}
