import { actionForNeed } from '../core/findings/binding-for-need.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import type { Action, Keymap, Place } from '../core/keymap/types.ts';
import { needListNamed } from '../core/needs/need-lists.ts';
import { type FindList, sourcedNeedsOf } from '../core/needs/needs-of.ts';
import { findRoutes } from '../core/routes/find-routes.ts';
import type { NeedRoute } from '../core/routes/types.ts';
import { innerRows } from './starter-rows.ts';

type Wanted = (route: NeedRoute, action: Action) => boolean;

const isMissing = ({ route }: NeedRoute) => route === null;
const isClumsy = ({ route }: NeedRoute) => route?.clumsy === true;
const isChar = ({ need }: NeedRoute) => need.kind === 'char';

/**
 * What comes to a place of its own, and when. Characters come first, and among them those that one bare key gives: it
 * may bring with it what Shift and other modifiers make of it. Then other keys, then shortcuts.
 */
const TURNS: readonly Wanted[] = [
  (each, action) => isChar(each) && isMissing(each) && action.do === 'key',
  (each) => isChar(each) && isClumsy(each),
  (each) => isChar(each) && isMissing(each),
  (each) => each.need.kind === 'key' && isMissing(each),
  (each) => isMissing(each) || isClumsy(each),
];

/** The layer for what finds no place on the others; it takes both thumbs. */
const MORE = { id: 'more', name: 'More' };

/**
 * A design with the needs that nothing types yet, or only clumsily, on its free main keys: layer by layer after the base,
 * row by row from the lowest, each only if it is still missing or clumsy at its turn. Where two layers do not hold all, a third takes more of it, which is on while both are; what finds no
 * place even there stays missing.
 */
export function withMissingNeeds(
  keymap: Keymap,
  host: HostLayout,
  findList: FindList = needListNamed,
): Keymap {
  const needs = sourcedNeedsOf(keymap, findList).needs.map(({ need }) => need);
  return TURNS.reduce((design, isWanted) => {
    const wanted = findRoutes(design, host, needs).flatMap((each) => {
      const action = actionForNeed(host, each.need);
      return action !== null && isWanted(each, action) ? [action] : [];
    });
    return placed(design, distinct(wanted));
  }, keymap);
}

function distinct(actions: readonly Action[]): readonly Action[] {
  return [...new Map(actions.map((action) => [JSON.stringify(action), action])).values()];
}

/** Puts actions on the free places, in order; those beyond are left out. */
function placed(keymap: Keymap, actions: readonly Action[]): Keymap {
  const roomy = freePlaces(keymap).length < actions.length ? withMore(keymap) : keymap;
  const free = freePlaces(roomy);
  const added = actions.slice(0, free.length).map((tap, at) => ({ place: free[at], tap }));
  const layers = roomy.layers.map((layer) => {
    const own = added.flatMap(({ place, tap }) =>
      place?.layer === layer.id ? [[place.key, { tap }] as const] : [],
    );
    return own.length === 0 ? layer : { ...layer, places: { ...layer.places, ...Object.fromEntries(own) } };
  });
  return { ...roomy, layers };
}

/** With a layer that is on while the two others are; without them there is no way to it. */
function withMore(keymap: Keymap): Keymap {
  const [, one, other, more] = keymap.layers;
  if (one === undefined || other === undefined || more !== undefined) return keymap;
  return { ...keymap, layers: [...keymap.layers, { ...MORE, places: {}, onWhile: [one.id, other.id] }] };
}

/** The lowest row first: the upper ones are the middle of what a layer is for. */
function freePlaces({ board, layers }: Keymap): readonly Place[] {
  const rows = innerRows(board).toReversed();
  return layers
    .slice(1)
    .flatMap((layer) =>
      rows.flatMap((row) =>
        row.flatMap((key) => (layer.places[key] === undefined ? [{ layer: layer.id, key }] : [])),
      ),
    );
}
