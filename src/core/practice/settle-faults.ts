import type { KeyEvent } from '../base/key-event.ts';
import { bindingThrough } from '../keymap/lookup.ts';
import { timingOf } from '../keymap/timing.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import type { Explained } from './chord-faults.ts';
import type { Fault } from './fault.ts';
import type { Stretch, TimedDeed } from './live-typing.ts';
import type { Way } from './ways.ts';

/** Keys with a tap and a hold that came as the other of the two than the way to the need wants. */
export function settleFaults(keymap: Keymap, way: Way, stretch: Stretch): Explained {
  const faults: Fault[] = [];
  const keys: KeyId[] = [];
  for (const deed of stretch.deeds) {
    const [key = ''] = deed.keys;
    if (deed.chord !== null || !isOfBoth(keymap, deed, key)) continue;
    const wanted = sidesOf(way, key);
    const isMissed = wanted.size > 0 && !wanted.has(deed.side);
    if (!isMissed || cameRightAsWell(stretch, key, wanted)) continue;
    faults.push(faultOf(keymap, deed, key, stretch.presses));
    keys.push(key);
  }
  return { faults, keys };
}

function sidesOf(way: Way, key: KeyId): ReadonlySet<string> {
  const deeds = way.deeds.filter((deed) => deed.chord === null && deed.keys.includes(key));
  return new Set(deeds.map(({ side }) => side));
}

function cameRightAsWell(stretch: Stretch, key: KeyId, wanted: ReadonlySet<string>): boolean {
  return stretch.deeds.some((deed) => deed.keys.includes(key) && wanted.has(deed.side));
}

function isOfBoth(keymap: Keymap, deed: TimedDeed, key: KeyId): boolean {
  const binding = bindingThrough(keymap, new Set(deed.layers), key)?.binding;
  return binding?.tap !== undefined && binding.hold !== undefined;
}

function faultOf(keymap: Keymap, deed: TimedDeed, key: KeyId, presses: readonly KeyEvent[]): Fault {
  const binding = bindingThrough(keymap, new Set(deed.layers), key)?.binding;
  const { holdAfterMs } = timingOf(keymap, binding);
  const fault = deed.side === 'tap' ? 'tap-for-hold' : 'hold-for-tap';
  return { fault, key, heldMs: heldFor(key, presses), holdAfterMs, rule: deed.rule };
}

/** How long the key was last down, ms; null while it still is. */
function heldFor(key: KeyId, presses: readonly KeyEvent[]): number | null {
  const down = presses.findLast((event) => event.key === key && event.type === 'down');
  const up = presses.findLast((event) => event.key === key && event.type === 'up');
  return down === undefined || up === undefined || up.t < down.t ? null : up.t - down.t;
}
