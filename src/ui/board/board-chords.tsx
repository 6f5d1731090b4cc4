import { useState } from 'react';
import type { ChordId } from '../../core/keymap/types.ts';
import { useBench } from '../../store/bench.ts';
import type { BoardScene } from './board-scene.ts';
import { ChordOutline, ChordTagDrawing } from './chord-drawing.tsx';

/** With more live chords than this their outlines are drawn lighter. */
const CROWD = 8;

/** All chords: the outlines first, so that none runs over a tag; looking at a tag brings its outlines out. */
export function BoardChords({ scene }: { readonly scene: BoardScene }) {
  const lit = useBench((bench) => bench.lit);
  const openCard = useBench((bench) => bench.openCard);
  const [lookedAt, setLookedAt] = useState<ChordId | null>(null);
  const isOpen = (id: ChordId) => openCard?.card === 'chord' && openCard.chord === id;
  const isLit = (id: ChordId) => id === lookedAt || lit?.chords.includes(id) === true || isOpen(id);
  const live = scene.chords.filter((chord) => chord.live);
  return (
    <>
      <g data-crowded={live.length > CROWD}>
        {scene.chords.map((chord) => (
          <ChordOutline key={chord.id} scene={chord} lit={isLit(chord.id)} />
        ))}
      </g>
      <g>
        {live.map((chord) =>
          chord.tag === null ? null : (
            <ChordTagDrawing
              key={chord.id}
              scene={chord}
              tag={chord.tag}
              lit={isLit(chord.id)}
              onLook={setLookedAt}
              tabStop={chord.id === live[0]?.id}
            />
          ),
        )}
      </g>
    </>
  );
}
