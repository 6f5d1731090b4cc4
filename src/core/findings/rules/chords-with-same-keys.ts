import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import type { LayerSet } from '../layer-grid.ts';
import { layerIds, layerNames, sharedLayers } from '../live-chords.ts';
import { alwaysTakes, type ResolvedChord, sameKeys } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { listed } from '../wording.ts';

const id = 'chords-with-same-keys';

/** Holds every chord against the first earlier one that has the same keys and shares a layer with it. */
export const chordsWithSameKeys: Rule = {
  id,
  title: 'Chords with the same keys',
  why: 'Of two chords with the same keys on one layer the earlier one fires.',
  check: (facts) =>
    facts.chords.flatMap((later) => {
      const rivals = facts.chords.filter((earlier) => isRival(earlier, later));
      const rival = rivals.find((earlier) => alwaysTakes(earlier, later)) ?? rivals[0];
      return rival === undefined ? [] : [found(facts, later, rival)];
    }),
};

function isRival(earlier: ResolvedChord, later: ResolvedChord): boolean {
  return (
    earlier.order < later.order &&
    earlier.whole &&
    later.whole &&
    sameKeys(earlier, later) &&
    sharedLayers(earlier, later) !== 0
  );
}

function found(facts: Facts, later: ResolvedChord, earlier: ResolvedChord): Finding {
  const shared = sharedLayers(earlier, later);
  const never = alwaysTakes(earlier, later);
  const where = listed(layerNames(facts, shared));
  const pair = `“${later.name}” and “${earlier.name}” have the same keys on ${where}`;
  return finding({
    rule: id,
    messageId: never ? 'never-fires' : 'seldom-fires',
    severity: never ? 'broken' : 'risky',
    message: never
      ? `${pair}; “${earlier.name}” comes first, so “${later.name}” never fires there.`
      : `${pair}; “${later.name}” fires only ${whenItFires(earlier, later)}.`,
    chords: [later.chord.id, earlier.chord.id],
    keys: later.boardKeys.map((key) => key.id),
    layers: layerIds(facts, shared),
    data: {
      chord: later.name,
      other: earlier.name,
      windowMs: later.chord.windowMs,
      otherWindowMs: earlier.chord.windowMs,
    },
    mends: never ? [mendOf(facts, later, shared)] : [],
  });
}

function whenItFires(earlier: ResolvedChord, later: ResolvedChord): string {
  const slower = `when its keys come more than ${earlier.chord.windowMs} ms apart`;
  const busier = `within ${earlier.quietBeforeMs} ms of another key`;
  const ways = [
    ...(earlier.chord.windowMs < later.chord.windowMs ? [slower] : []),
    ...(earlier.quietBeforeMs > later.quietBeforeMs ? [busier] : []),
  ];
  return ways.join(' or ');
}

/** Takes the later chord off the layers it shares; where it fires on no other, deletes it. */
function mendOf(facts: Facts, later: ResolvedChord, shared: LayerSet): Mend {
  const left = layerIds(facts, later.live & ~shared);
  if (left.length === 0 || facts.reach.fires[later.order] !== true) {
    return { title: `Delete “${later.name}”`, edits: [{ edit: 'delete-chord', chord: later.chord.id }] };
  }
  const names = listed(layerNames(facts, later.live & ~shared));
  return {
    title: `Keep “${later.name}” on ${names} only`,
    edits: [{ edit: 'change-chord', chord: later.chord.id, to: { layers: left } }],
  };
}
