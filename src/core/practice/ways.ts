import { type KeyRenaming, renamed } from '../board/key-renaming.ts';
import { compileKeymap } from '../engine/compile.ts';
import type { Compiled } from '../engine/compiled.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { needText } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import { describeSteps } from '../routes/describe.ts';
import type { NeedRoute, Route } from '../routes/types.ts';
import type { Deed } from './deed.ts';
import { LiveTyping } from './live-typing.ts';
import type { KnownRoute } from './session-log.ts';

/** How a need is meant to be typed: the deeds of its route, and those of them that type. */
export interface Way {
  readonly deeds: readonly Deed[];
  readonly typing: readonly Deed[];
  /** As it is remembered with practice. */
  readonly known: KnownRoute;
}

/** The ways to the needs of a design, each worked out when it is first asked for. */
export class Ways {
  readonly #keymap: Keymap;
  readonly #host: HostLayout;
  readonly #compiled: Compiled;
  readonly #routes: ReadonlyMap<string, Route | null>;
  readonly #ways = new Map<string, Way | null>();

  constructor(keymap: Keymap, host: HostLayout, needs: readonly NeedRoute[]) {
    this.#keymap = keymap;
    this.#host = host;
    this.#compiled = compileKeymap(keymap, host);
    this.#routes = new Map(needs.map(({ need, route }) => [needText(need), route]));
  }

  /** The way to a need as a keymap writes it; null where there is none. */
  of(need: string): Way | null {
    const known = this.#ways.get(need);
    if (known !== undefined) return known;
    const route = this.#routes.get(need) ?? null;
    const way = route === null ? null : this.#find(route);
    this.#ways.set(need, way);
    return way;
  }

  /** The route to a need, null where there is none. */
  routeOf(need: string): Route | null {
    return this.#routes.get(need) ?? null;
  }

  /** Somebody who types on this design, nothing pressed yet. */
  live(): LiveTyping {
    return new LiveTyping(this.#keymap, this.#host, this.#compiled);
  }

  /** The deeds of a route are found by playing its presses through the engine. */
  #find(route: Route): Way {
    const live = this.live();
    for (const event of route.events) live.feed(event);
    live.finish();
    const { deeds, given } = live.stretch();
    const typing = [...new Set(given.flatMap(({ deed }) => (deed === null ? [] : [deed])))];
    const keys = [...new Set(typing.flatMap((deed) => deed.keys))];
    const words = describeSteps(this.#keymap, route).filter((text) => !text.startsWith('release'));
    return { deeds, typing, known: { signature: signatureOf(route), words: words.join(', '), keys } };
  }
}

/**
 * What has to be relearnt when it changes: which keys are held and which are pressed, in order. Windows and thresholds, names
 * of layers and what lies on other keys are no part of it.
 */
export function signatureOf(route: Route): string {
  return route.steps
    .filter((step) => step.move !== 'release')
    .map((step) => `${step.move} ${[...step.keys].sort().join('+')}`)
    .join(', ');
}

/** A signature after keys of the board were given other ids. */
export function renamedSignature(signature: string, renaming: KeyRenaming): string {
  const steps = signature.split(', ').map((step) => {
    const [move, keys = ''] = step.split(' ');
    const to = keys.split('+').map((key) => renamed(renaming, key));
    return `${move} ${to.sort().join('+')}`;
  });
  return signature === '' ? '' : steps.join(', ');
}
