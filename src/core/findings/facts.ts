import type { HostLayout } from '../host/host-layout.ts';
import type { Need } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import { needsOfKeymap } from '../needs/needs-of.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { NeedRoute } from '../routes/types.ts';
import { type LayerGrid, layerGrid } from './layer-grid.ts';
import { type LayerReach, layerReach } from './layer-reach.ts';
import { type ResolvedChord, resolveChords } from './resolved-chord.ts';

/** All that the rules look at, computed once for a design on a host layout. */
export interface Facts {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly grid: LayerGrid;
  /** The chords in document order. */
  readonly chords: readonly ResolvedChord[];
  readonly reach: LayerReach;
  /** The needs asked for, with their routes. */
  readonly needs: readonly NeedRoute[];
}

/** The facts of a design; `needs` replaces what the design itself says that must be typed. */
export function factsOf(keymap: Keymap, host: HostLayout, needs?: readonly Need[]): Facts {
  return factsWith(keymap, host, findRoutes(keymap, host, needs ?? needsOfKeymap(keymap)));
}

/** The facts of a design whose needs have been looked up already. */
export function factsWith(keymap: Keymap, host: HostLayout, needs: readonly NeedRoute[]): Facts {
  const grid = layerGrid(keymap);
  const chords = resolveChords(keymap, grid);
  return { keymap, host, grid, chords, reach: layerReach(grid, chords), needs };
}
