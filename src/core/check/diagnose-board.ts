import type { HostLayout } from '../host/host-layout.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import type { BoardFault, OtherCharacter } from './board-fault.ts';
import { type Checked, type GivenKeys, givenKeys } from './given-keys.ts';
import { type Prediction, predictionOf, type Wiring, withoutHold } from './hypothesis.ts';
import { keyFor, strokesText } from './judge.ts';
import { movedKeys } from './moved-keys.ts';
import { modifiersDown, spoiledBy, switchFaults } from './switch-faults.ts';
import { withUnseenSwaps } from './unseen-swaps.ts';

/**
 * What is likely wrong with a board, from all steps that were checked: first faults of the whole (keys that have changed
 * places, layers that are not reached, another host layout), then of single keys and chords. What a fault makes of every
 * other step is worked out through the engine, so that it is not told once more, and what is left over is. A right board
 * has none.
 */
export function diagnoseBoard(
  keymap: Keymap,
  host: HostLayout,
  checked: readonly Checked[],
): readonly BoardFault[] {
  const predict = predictionOf(keymap, host);
  const switches = switchFaults(checked);
  const isSpoiled = spoiledBy(checked);
  const sound = checked.filter((each) => !isSpoiled(each));
  const given = withUnseenSwaps(givenKeys(keymap, checked), sound, predict);
  const dead = deadKeys(keymap, sound, predict, given);
  const wiring: Wiring = { wiredAs: given, dead: new Set(dead.map(({ key }) => key)) };
  const faulty = new Set([...wiring.dead, ...switches.map(({ key }) => key)]);
  const open = sound.filter(
    ({ step, result }) =>
      result.verdict !== 'right' &&
      !result.otherCharacters &&
      ![...step.keys, ...step.held].some((key) => faulty.has(given.get(key) ?? key) || faulty.has(key)) &&
      predict(step, wiring) !== strokesText(result.strokes),
  );
  const layers = layersNotReached(keymap, host, open, wiring);
  const ofLayers = new Set(layers.flatMap(({ steps }) => steps));
  const left = open.filter(({ step }) => !ofLayers.has(step.id));
  return [
    ...movedKeys(keymap.board, given),
    ...layers,
    ...otherHost(checked),
    ...dead,
    ...switches,
    ...modifiersDown(checked),
    ...left.map((each) => singleFault(keymap, checked, each, given)),
  ];
}

type LayerFault = BoardFault & { fault: 'layer-not-reached' };

/**
 * Layers on which two keys or more, and most of those that are unexplained, gave what comes when the key that holds the
 * layer does nothing, or is never taken for held.
 */
function layersNotReached(
  keymap: Keymap,
  host: HostLayout,
  open: readonly Checked[],
  wiring: Wiring,
): readonly LayerFault[] {
  const byEntry = new Map<string, Checked[]>();
  for (const each of open) {
    const { at, held } = each.step;
    if ('chord' in at || held.length === 0) continue;
    const name = `${at.place.layer} ${held.join('+')}`;
    byEntry.set(name, [...(byEntry.get(name) ?? []), each]);
  }
  return [...byEntry.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined || 'chord' in first.step.at) return [];
    const by = first.step.held.findLast((key) => failsToHold(keymap, host, group, key, wiring));
    if (by === undefined) return [];
    const steps = group.map(({ step }) => step.id);
    return [{ fault: 'layer-not-reached', layer: first.step.at.place.layer, by, steps } as const];
  });
}

function failsToHold(
  keymap: Keymap,
  host: HostLayout,
  group: readonly Checked[],
  key: KeyId,
  wiring: Wiring,
): boolean {
  const asTap = predictionOf(withoutHold(keymap, key), host);
  const plain = predictionOf(keymap, host);
  const without = { ...wiring, dead: new Set([...wiring.dead, key]) };
  const like = group.filter(({ step, result }) => {
    const came = strokesText(result.strokes);
    return asTap(step, wiring) === came || plain(step, without) === came;
  });
  return like.length >= 2 && like.length * 2 > group.length;
}

function otherHost(checked: readonly Checked[]): readonly BoardFault[] {
  const steps = checked.filter(({ result }) => result.otherCharacters);
  if (steps.length === 0) return [];
  const characters = new Map<string, OtherCharacter>();
  for (const { step, result } of steps) {
    for (const [at, expected] of step.expects.entries()) {
      const came = result.strokes[at]?.key ?? '';
      const { code } = expected;
      const key = keyFor(expected, result.strokes[at]);
      if (key !== null && came !== '' && came !== key)
        characters.set(`${code} ${key}`, { code, expected: key, came });
    }
  }
  return [
    { fault: 'other-host', characters: [...characters.values()], steps: steps.map(({ step }) => step.id) },
  ];
}

type DeadKey = BoardFault & { fault: 'dead-key' };

/**
 * Keys of which nothing came at least once, and everything else that came is what comes without them, or without
 * them and what was held; but for those of
 * which nothing has to come, since they give what a silent key should.
 */
function deadKeys(
  keymap: Keymap,
  checked: readonly Checked[],
  predict: Prediction,
  given: GivenKeys,
): readonly DeadKey[] {
  return keymap.board.keys.flatMap(({ id }) => {
    const own = checked.filter(({ step }) => step.keys.length === 1 && step.keys[0] === id);
    const fits = ({ step, result }: Checked, dead: readonly KeyId[]) =>
      predict(step, { wiredAs: given, dead: new Set(dead) }) === strokesText(result.strokes);
    const isDead =
      own.some(({ result }) => result.verdict === 'silent') &&
      own.every((each) => fits(each, [id]) || fits(each, [id, ...each.step.held])) &&
      !own.every((each) => fits(each, []));
    return isDead ? [{ fault: 'dead-key', key: id, steps: own.map(({ step }) => step.id) } as const] : [];
  });
}

/** What one wrong step tells by itself. */
function singleFault(
  keymap: Keymap,
  checked: readonly Checked[],
  { step, result }: Checked,
  given: GivenKeys,
): BoardFault {
  if (result.verdict === 'silent') return { fault: 'nothing-came', step: step.id };
  if ('chord' in step.at) return missedChord(keymap, checked, { step, result }, step.at.chord, given);
  const { place, side } = step.at;
  const fellow = checked.find(
    ({ step: { at } }) =>
      'place' in at && at.place.key === place.key && at.place.layer === place.layer && at.side !== side,
  );
  const isFellow = fellow !== undefined && strokesText(result.strokes) === strokesText(fellow.step.expects);
  if (!isFellow || side === 'onShift') return { fault: 'something-else', step: step.id };
  return { fault: side === 'hold' ? 'tap-for-hold' : 'hold-for-tap', step: step.id, key: place.key };
}

/** A chord whose keys came by themselves; keys that have changed places come as those that they give. */
function missedChord(
  keymap: Keymap,
  checked: readonly Checked[],
  { step, result }: Checked,
  id: string,
  given: GivenKeys,
): BoardFault {
  const chord = chordsOf(keymap).find((one) => one.id === id);
  const keys = new Set(step.keys.map((key) => given.get(key) ?? key));
  const taps = new Set(
    checked
      .filter(({ step: other }) => other.keys.length === 1 && keys.has(other.keys[0] ?? ''))
      .map(({ step: other }) => strokesText(other.expects)),
  );
  const isOfTaps =
    result.strokes.length > 0 && result.strokes.every((stroke) => taps.has(strokesText([stroke])));
  if (chord === undefined || !isOfTaps) return { fault: 'something-else', step: step.id };
  const first = result.strokes[0]?.timeMs ?? 0;
  const apartMs = (result.strokes.at(-1)?.timeMs ?? first) - first;
  return { fault: 'chord-missed', chord: id, step: step.id, apartMs, windowMs: chord.windowMs };
}
