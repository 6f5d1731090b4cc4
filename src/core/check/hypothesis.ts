import { compileKeymap } from '../engine/compile.ts';
import { playCompiled } from '../engine/play.ts';
import type { HostLayout } from '../host/host-layout.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import { expectedStrokes } from './expected.ts';
import { strokesText } from './judge.ts';
import type { CheckStep } from './steps.ts';

/** A board as it may really be: keys wired as others, keys that do nothing. */
export interface Wiring {
  readonly wiredAs: ReadonlyMap<KeyId, KeyId>;
  readonly dead: ReadonlySet<KeyId>;
}

/** What would come of a step, as one text to compare by. */
export type Prediction = (step: CheckStep, wiring: Wiring) => string;

/** Plays steps as a board of that wiring would: what a fault makes of every step is worked out and not guessed. */
export function predictionOf(keymap: Keymap, host: HostLayout): Prediction {
  const compiled = compileKeymap(keymap, host);
  return (step, { wiredAs, dead }) => {
    const events = step.events.flatMap((event) =>
      dead.has(event.key) ? [] : [{ ...event, key: wiredAs.get(event.key) ?? event.key }],
    );
    const played = playCompiled(compiled, events);
    return played.ok ? strokesText(expectedStrokes(played.value.output, host)) : '';
  };
}

/** The design without what a key does when it is held: what comes if the board never takes it for held. */
export function withoutHold(keymap: Keymap, key: KeyId): Keymap {
  const layers = keymap.layers.map((layer) => {
    const { hold, ...rest } = layer.places[key] ?? {};
    if (hold === undefined || rest.tap === undefined) return layer;
    return { ...layer, places: { ...layer.places, [key]: rest } };
  });
  return { ...keymap, layers };
}
