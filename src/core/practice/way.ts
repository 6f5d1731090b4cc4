import type { HostLayout } from '../host/host-layout.ts';
import type { Keymap } from '../keymap/types.ts';
import type { Route } from '../routes/types.ts';
import type { Deed } from './deed.ts';
import { LiveTyping } from './live-typing.ts';

/** How a need is meant to be typed: the deeds of its route, and those of them that type. */
export interface Way {
  readonly deeds: readonly Deed[];
  readonly typing: readonly Deed[];
}

/** The deeds of a route, found by playing its presses through the engine. */
export function wayOf(keymap: Keymap, host: HostLayout, route: Route): Way {
  const live = new LiveTyping(keymap, host);
  for (const event of route.events) live.feed(event);
  live.finish();
  const { deeds, given } = live.stretch();
  const typing = given.flatMap(({ deed }) => (deed === null ? [] : [deed]));
  return { deeds, typing: [...new Set(typing)] };
}
