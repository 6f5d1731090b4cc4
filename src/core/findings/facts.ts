import type { HostLayout } from '../host/host-layout.ts';
import type { Need } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import { needListNamed } from '../needs/need-lists.ts';
import { type FindList, sourcedNeedsOf } from '../needs/needs-of.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { NeedRoute } from '../routes/types.ts';
import type { AccidentFacts } from './accident-facts.ts';
import { type LayerGrid, layerGrid } from './layer-grid.ts';
import { type LayerReach, layerReach } from './layer-reach.ts';
import { type BoundPlace, boundPlaces } from './places.ts';
import { type ResolvedChord, resolveChords } from './resolved-chord.ts';
import { type WaivedNeed, waivedNeeds } from './waived-needs.ts';

/** All that the rules look at, computed once for a design on a host layout. */
export interface Facts {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly grid: LayerGrid;
  /** The chords in document order. */
  readonly chords: readonly ResolvedChord[];
  readonly reach: LayerReach;
  /** Every binding of a key that the board has, layer by layer. */
  readonly places: readonly BoundPlace[];
  /** The needs asked for, with their routes. */
  readonly needs: readonly NeedRoute[];
  /** The needs let off, each once, with the routes that they have all the same. */
  readonly waived: readonly WaivedNeed[];
  /** Names of need lists that are not known. */
  readonly unknownLists: readonly string[];
  /** What ordinary typing does to the design; null where it was not asked. */
  readonly accidents: AccidentFacts | null;
}

/**
 * The facts of a design. `needs` replaces what the design itself says that must be typed; `findList` knows the need
 * lists by their names. Accidents belong to a typist and a text, so they are handed in.
 */
export function factsOf(
  keymap: Keymap,
  host: HostLayout,
  needs?: readonly Need[],
  findList: FindList = needListNamed,
  accidents: AccidentFacts | null = null,
): Facts {
  const { needs: sourced, unknownLists } = sourcedNeedsOf(keymap, findList);
  const asked = needs ?? sourced.map(({ need }) => need);
  const waived = waivedNeeds(keymap, findList);
  const routes = findRoutes(keymap, host, [...asked, ...waived.map(({ need }) => need)]);
  return {
    ...designFacts(keymap, host),
    needs: routes.slice(0, asked.length),
    waived: waived.map((each, at) => ({ ...each, route: routes[asked.length + at]?.route ?? null })),
    unknownLists,
    accidents,
  };
}

/** The facts that need no routes: the keys and layers by number, the chords, what can be reached, every binding. */
export function designFacts(
  keymap: Keymap,
  host: HostLayout,
): Pick<Facts, 'keymap' | 'host' | 'grid' | 'chords' | 'reach' | 'places'> {
  const reached = reachFacts(keymap);
  return { keymap, host, ...reached, places: boundPlaces(keymap, reached.grid, reached.reach) };
}

/** What can be reached on a design, and the keys, layers and chords by number. */
export function reachFacts(keymap: Keymap): Pick<Facts, 'grid' | 'chords' | 'reach'> {
  const grid = layerGrid(keymap);
  const chords = resolveChords(keymap, grid);
  return { grid, chords, reach: layerReach(grid, chords) };
}
