import { freshId } from '../../../core/keymap/fresh-id.ts';
import { chordsOf } from '../../../core/keymap/timing.ts';
import type { Chord, ChordId } from '../../../core/keymap/types.ts';
import { useBench } from '../../../store/bench.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './cards.module.css';
import { ChordFields } from './chord-fields.tsx';

/** The card of a chord that is there: every change is made at once. */
export function ChordCard({ chordId }: { readonly chordId: ChordId }) {
  const chord = useBench((bench) => chordsOf(bench.keymap).find((each) => each.id === chordId));
  const { edit, openCardOf } = useBench.getState();
  if (chord === undefined) return null;
  const remove = () => {
    openCardOf(null);
    edit({ edit: 'delete-chord', chord: chordId });
  };
  return (
    <>
      <ChordFields chord={chord} onChange={(to) => edit({ edit: 'change-chord', chord: chordId, to })} />
      <div className={styles.buttons}>
        <Button tone="danger" onClick={remove}>
          Delete chord
        </Button>
      </div>
    </>
  );
}

/** The card of a chord that is being made: nothing of it is in the design before its button is pressed. */
export function NewChordCard({ draft }: { readonly draft: Omit<Chord, 'id'> }) {
  const { openCardOf } = useBench.getState();
  const givesNothing = draft.action.do === 'nothing';
  return (
    <>
      <ChordFields
        chord={draft}
        onChange={(to) => {
          const { keys = draft.keys, windowMs = draft.windowMs, action = draft.action } = to;
          const optional = present({ ...draft, ...to });
          openCardOf({ card: 'new-chord', draft: { ...optional, keys, windowMs, action } });
        }}
      />
      <div className={styles.buttons}>
        <Button
          tone="accent"
          disabled={givesNothing}
          title={givesNothing ? 'Choose first what the chord gives' : undefined}
          onClick={() => make(draft)}
        >
          Make chord
        </Button>
        <Button tone="quiet" onClick={() => openCardOf(null)}>
          Cancel
        </Button>
      </div>
    </>
  );
}

/** Puts the chord into the design and leaves its card open, so that its window can be tried at once. */
function make(draft: Omit<Chord, 'id'>): void {
  const { keymap, edit, openCardOf, selectKeys } = useBench.getState();
  const id = freshId(
    'c',
    chordsOf(keymap).map((chord) => chord.id),
  );
  edit({ edit: 'add-chord', chord: { id, ...draft } });
  const isMade = chordsOf(useBench.getState().keymap).some((chord) => chord.id === id);
  if (!isMade) return;
  selectKeys([], 'only');
  openCardOf({ card: 'chord', chord: id });
}

type Present<Fields> = { [Name in keyof Fields]?: NonNullable<Fields[Name]> };

/** Only the fields that have a value: a chord has no empty ones. */
function present<Fields extends object>(fields: Fields): Present<Fields> {
  const entries = Object.entries(fields).filter(([, value]) => value !== undefined && value !== null);
  return Object.fromEntries(entries) as Present<Fields>;
}
