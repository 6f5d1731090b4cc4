import type { HostLayout, Stroke } from '../host/host-layout.ts';
import { actionsOf } from '../keymap/actions-of.ts';
import { type Need, needText } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import type { NeedRoute, Route } from '../routes/types.ts';

/** A host layout and the routes that a design has on it for the same needs. */
export interface OnHost {
  readonly host: HostLayout;
  readonly needs: readonly NeedRoute[];
}

/** A character that is typed on both hosts, but not in the same way. */
export interface MovedCharacter {
  readonly char: string;
  /** The shortest strokes that the host layout has for it; empty where it has none and the design needs none. */
  readonly before: readonly Stroke[];
  readonly after: readonly Stroke[];
  /** Whether the hands do the same on the board as before: it then only sends other keys. */
  readonly sameHands: boolean;
}

/** What another host, or the same one corrected, makes of a design. */
export interface HostChanges {
  readonly moved: readonly MovedCharacter[];
  /** Could be typed, and no longer can: needs in their order, then characters that only actions ask for. */
  readonly lost: readonly Need[];
  readonly gained: readonly Need[];
}

/**
 * What changes when a design comes from one host to another. Its characters are those among the needs and those of
 * `char` and `text` actions; a character that only an action asks for counts as typed where the host has strokes
 * for it. A character is moved where the host's strokes or the presses on the board are others.
 */
export function hostChanges(keymap: Keymap, before: OnHost, after: OnHost): HostChanges {
  const then = routesByNeed(before.needs);
  const now = routesByNeed(after.needs);
  const moved: MovedCharacter[] = [];
  const lost: Need[] = [];
  const gained: Need[] = [];
  for (const need of needsAndActions(keymap, after.needs)) {
    const was = wayOf(need, then, before.host);
    const is = wayOf(need, now, after.host);
    if (was !== null && is === null) lost.push(need);
    else if (was === null && is !== null) gained.push(need);
    else if (was !== null && is !== null && need.kind === 'char') {
      const sameHands = was.moves === is.moves;
      if (sameHands && strokesText(was.strokes) === strokesText(is.strokes)) continue;
      moved.push({ char: need.char, before: was.strokes, after: is.strokes, sameHands });
    }
  }
  return { moved, lost, gained };
}

interface Way {
  readonly strokes: readonly Stroke[];
  /** What the hands do, to be compared; the same for all characters that only actions ask for. */
  readonly moves: string;
}

function wayOf(need: Need, routes: ReadonlyMap<string, Route | null>, host: HostLayout): Way | null {
  const strokes = need.kind === 'char' ? host.routesOf(need.char)[0] : undefined;
  const route = routes.get(needText(need));
  if (route === undefined) return strokes === undefined ? null : { strokes, moves: '' };
  return route === null ? null : { strokes: strokes ?? [], moves: movesText(route) };
}

function routesByNeed(needs: readonly NeedRoute[]): ReadonlyMap<string, Route | null> {
  return new Map(needs.map(({ need, route }) => [needText(need), route]));
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The needs, then the characters of actions that are none of them, each once. */
function needsAndActions(keymap: Keymap, needs: readonly NeedRoute[]): readonly Need[] {
  const found = new Map(needs.map(({ need }) => [needText(need), need]));
  for (const { action } of actionsOf(keymap)) {
    const text = action.do === 'char' ? action.char : action.do === 'text' ? action.text : '';
    for (const { segment } of graphemes.segment(text)) {
      const need: Need = { kind: 'char', char: segment.normalize('NFC') };
      if (!found.has(needText(need))) found.set(needText(need), need);
    }
  }
  return [...found.values()];
}

function strokesText(strokes: readonly Stroke[]): string {
  return strokes.map((stroke) => [...stroke.with, stroke.code].join('+')).join(' ');
}

function movesText(route: Route): string {
  return route.steps.map((step) => `${step.move} ${step.keys.join('+')}`).join(', ');
}
