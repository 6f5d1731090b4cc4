import { timingOf } from '../../keymap/timing.ts';
import type { Binding } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { bindingAt, effectiveLayer, has, highest } from '../layer-grid.ts';
import type { LayerState } from '../layer-state.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { keysInWords, sentence } from '../wording.ts';

const id = 'chord-uses-hold-tap';

interface HoldTapKey {
  readonly key: number;
  readonly binding: Binding;
}

/** Looks at the keys of every chord as they are bound where the chord is live. */
export const chordUsesHoldTap: Rule = {
  id,
  title: 'Chord that uses a hold/tap key',
  why: 'Two rules wait for the same press: quick keys become the chord, not a hold with a key.',
  check(facts) {
    const tops = firstStatePerTop(facts);
    return facts.chords.flatMap((chord) => {
      const keys = holdTapKeys(facts, chord, tops);
      return keys.length === 0 ? [] : [found(facts, chord, keys)];
    });
  },
};

function firstStatePerTop({ reach }: Facts): ReadonlyMap<number, LayerState> {
  const tops = new Map<number, LayerState>();
  for (const state of reach.states) {
    const top = highest(state.on);
    if (!tops.has(top)) tops.set(top, state);
  }
  return tops;
}

function holdTapKeys(
  { grid }: Facts,
  chord: ResolvedChord,
  tops: ReadonlyMap<number, LayerState>,
): readonly HoldTapKey[] {
  const found = new Map<number, HoldTapKey>();
  for (const [top, state] of tops) {
    if (!has(chord.live, top)) continue;
    for (const key of chord.keys) {
      const binding = bindingAt(grid, key, effectiveLayer(grid, key, state.on));
      if (binding?.tap && binding.hold && !found.has(key)) found.set(key, { key, binding });
    }
  }
  return [...found.values()].sort((one, other) => one.key - other.key);
}

function found(facts: Facts, chord: ResolvedChord, keys: readonly HoldTapKey[]): Finding {
  const { keymap } = facts;
  const { windowMs } = chord.chord;
  const ids = keys.flatMap(({ key }) => keymap.board.keys[key]?.id ?? []);
  const holdAfterMs = Math.min(...keys.map(({ binding }) => timingOf(keymap, binding).holdAfterMs));
  const outlasts = windowMs >= holdAfterMs;
  const who = keysInWords(keymap, ids);
  const verb = ids.length === 1 ? 'has a hold' : 'have holds';
  return finding({
    rule: id,
    messageId: outlasts ? 'outlasts-hold' : 'waits-first',
    severity: outlasts ? 'risky' : 'note',
    message: sentence(
      outlasts
        ? `${who} ${verb} after ${holdAfterMs} ms, but “${chord.name}” keeps the key waiting for ${windowMs} ms: the hold comes late.`
        : `${who} ${verb} too: pressed within ${windowMs} ms of each other the keys are “${chord.name}”, not a hold and a key.`,
    ),
    chords: [chord.chord.id],
    keys: ids,
    data: { chord: chord.name, windowMs, holdAfterMs },
  });
}
