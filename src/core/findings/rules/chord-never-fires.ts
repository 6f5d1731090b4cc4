import { keyName } from '../../board/key-name.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { enterMend } from '../hold-place.ts';
import { has, highest, numbersIn } from '../layer-grid.ts';
import { isDown } from '../layer-state.ts';
import { layerIds, layerNames } from '../live-chords.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { listed, sentence } from '../wording.ts';

const id = 'chord-never-fires';

/** Looks at every chord that no state of the layers lets fire; chords with the same keys have a rule of their own. */
export const chordNeverFires: Rule = {
  id,
  title: 'Chord never fires',
  why: 'A chord is looked for on the highest layer that is on only, and with its keys up.',
  check: (facts) =>
    facts.chords.flatMap((chord) => {
      const reason = chord.whole && facts.reach.fires[chord.order] === false ? reasonOf(facts, chord) : null;
      return reason === null ? [] : [found(facts, chord, reason)];
    }),
};

type Reason =
  | { readonly messageId: 'layer-never-entered' }
  | { readonly messageId: 'never-on-top' }
  | { readonly messageId: 'key-is-down'; readonly key: number };

function reasonOf({ reach }: Facts, chord: ResolvedChord): Reason | null {
  if ((reach.entered & chord.live) === 0) return { messageId: 'layer-never-entered' };
  if ((reach.onTop & chord.live) === 0) return { messageId: 'never-on-top' };
  const onTop = reach.states.filter((state) => has(chord.live, highest(state.on)));
  const down = onTop.map((state) => chord.keys.find((key) => isDown(state, key)));
  const key = down[0];
  return key !== undefined && down.every((each) => each !== undefined)
    ? { messageId: 'key-is-down', key }
    : null;
}

function found(facts: Facts, chord: ResolvedChord, reason: Reason): Finding {
  const { keymap } = facts;
  const first = reason.messageId === 'key-is-down' ? keymap.board.keys[reason.key]?.id : undefined;
  const others = chord.boardKeys.map((key) => key.id).filter((key) => key !== first);
  const layers = listed(layerNames(facts, chord.live));
  return finding({
    rule: id,
    messageId: reason.messageId,
    severity: 'broken',
    message: messageOf(facts, chord, reason, layers),
    chords: [chord.chord.id],
    keys: first === undefined ? others : [first, ...others],
    layers: layerIds(facts, chord.live),
    data: { chord: chord.name, layers },
    mends: mendsOf(facts, chord, reason),
  });
}

function messageOf({ keymap }: Facts, chord: ResolvedChord, reason: Reason, layers: string): string {
  switch (reason.messageId) {
    case 'layer-never-entered':
      return `“${chord.name}” never fires: it is live on ${layers} only, which nobody can enter.`;
    case 'never-on-top':
      return `“${chord.name}” never fires: it is live on ${layers} only, and another layer is always above.`;
    case 'key-is-down': {
      const name = keyName(keymap.board, keymap.board.keys[reason.key]?.id ?? '');
      return sentence(
        `${name} has to be held down to be on ${layers}, so “${chord.name}” cannot be pressed there.`,
      );
    }
  }
}

function mendsOf(facts: Facts, chord: ResolvedChord, reason: Reason): readonly Mend[] {
  const remove: Mend = {
    title: `Delete “${chord.name}”`,
    edits: [{ edit: 'delete-chord', chord: chord.chord.id }],
  };
  const layers = numbersIn(chord.live);
  const only = layers.length === 1 ? layers[0] : undefined;
  const enter =
    reason.messageId === 'layer-never-entered' && only !== undefined ? enterMend(facts, only) : null;
  return enter === null ? [remove] : [enter, remove];
}
