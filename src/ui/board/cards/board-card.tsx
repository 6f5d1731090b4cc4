import { type RefObject, useCallback } from 'react';
import { keyName } from '../../../core/board/key-name.ts';
import { chordsOf } from '../../../core/keymap/timing.ts';
import type { Board, ChordId, KeyId, Keymap } from '../../../core/keymap/types.ts';
import { useBench } from '../../../store/bench.ts';
import type { OpenCard } from '../../../store/bench-state.ts';
import { elementOfKey } from '../key-element.ts';
import { CardSheet } from './card-sheet.tsx';
import { ChordCard, NewChordCard } from './chord-card.tsx';
import { KeyCard } from './key-card.tsx';

interface BoardCardProps {
  readonly svg: RefObject<SVGSVGElement | null>;
  /** See `CardSheet`. */
  readonly focusRequest: number;
}

/** The card that is open on the board, if one is. */
export function BoardCard({ svg, focusRequest }: BoardCardProps) {
  const card = useBench((bench) => bench.openCard);
  const keymap = useBench((bench) => bench.keymap);
  const openCardOf = useBench((bench) => bench.openCardOf);
  const anchors = useCallback(
    () =>
      card === null ? [] : keysOfCard(card, keymap).flatMap((key) => elementOfKey(svg.current, key) ?? []),
    [card, keymap, svg],
  );
  const close = useCallback(() => openCardOf(null), [openCardOf]);
  if (card === null) return null;
  return (
    <CardSheet
      title={titleOf(card, keymap)}
      anchors={anchors}
      board={svg}
      focusRequest={focusRequest}
      onClose={close}
    >
      {card.card === 'key' && <KeyCard key={card.key} keyId={card.key} />}
      {card.card === 'chord' && <ChordCard key={card.chord} chordId={card.chord} />}
      {card.card === 'new-chord' && <NewChordCard draft={card.draft} />}
    </CardSheet>
  );
}

function keysOfCard(card: OpenCard, keymap: Keymap): readonly KeyId[] {
  if (card.card === 'key') return [card.key];
  return card.card === 'chord' ? keysOfChord(keymap, card.chord) : card.draft.keys;
}

function keysOfChord(keymap: Keymap, id: ChordId): readonly KeyId[] {
  return chordsOf(keymap).find((chord) => chord.id === id)?.keys ?? [];
}

function titleOf(card: OpenCard, keymap: Keymap): string {
  if (card.card === 'key') return capitalized(keyName(keymap.board, card.key));
  if (card.card === 'new-chord') return `New chord of ${card.draft.keys.length} keys`;
  const chord = chordsOf(keymap).find((each) => each.id === card.chord);
  return `Chord ${chord?.name ?? namesOf(keymap.board, chord?.keys ?? [])}`;
}

function namesOf(board: Board, keys: readonly KeyId[]): string {
  return `of ${keys.map((key) => keyName(board, key)).join(', ')}`;
}

function capitalized(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
