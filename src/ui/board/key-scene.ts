import { type LegendSource, tapLegend } from '../../core/host/legend.ts';
import { bindingOn } from '../../core/keymap/lookup.ts';
import { openNotesAbout } from '../../core/keymap/open-notes.ts';
import type {
  Action,
  Binding,
  BoardKey,
  KeyId,
  Keymap,
  Layer,
  LayerId,
  ShiftedAction,
} from '../../core/keymap/types.ts';
import { type FittedText, fitText, type TextSpace } from './fit-text.ts';

/** A legend on a key, with its place from the cap's centre, mm, and the layer that it leads to, by its index. */
export interface Glyph extends FittedText {
  readonly x: number;
  readonly y: number;
  readonly leadsTo: number | null;
}

/** How a layer stands at a key: it has something, it is blank on purpose, or it falls through. */
export type Standing = 'own' | 'blank' | 'falls';

/** One step of the ladder: what one layer has at this key. */
export interface Rung {
  readonly layer: number;
  readonly front: boolean;
  readonly standing: Standing;
  readonly glyph: Glyph | null;
  /** The binding has a hold beside its tap. */
  readonly withHold: boolean;
  /** Upper left corner and size, mm from the cap's centre. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A key as it is drawn: plain data, equal for equal content, so that a key that did not change is not drawn again. */
export interface KeyScene {
  readonly id: KeyId;
  readonly x: number;
  readonly y: number;
  readonly rotation: number;
  readonly width: number;
  readonly height: number;
  readonly home: boolean;
  readonly standing: Standing;
  /** The tap of the layer in front, or of the one it falls through to. */
  readonly tap: Glyph | null;
  readonly hold: Glyph | null;
  /** Where the line between tap and hold lies, mm from the centre; null without a hold. */
  readonly holdLine: { readonly x: number; readonly y: number; readonly width: number } | null;
  readonly rungs: readonly Rung[];
  /** Whether the layer in front has a binding here that can be picked up. */
  readonly bound: boolean;
  /** How many open notes of the diary are about it. */
  readonly notes: number;
}

/** What all keys of a drawing share. */
export interface KeySceneSource extends LegendSource {
  /** For drawings so small that rungs could not be read. */
  readonly withoutLadder?: boolean;
  readonly keymap: Keymap;
  readonly frontLayer: LayerId;
  /** Layers that have no rung, by their place in the document; the layer in front keeps its own. */
  readonly hiddenRungs?: readonly number[];
}

/** Within a cap, as parts of its width or height; lengths in mm. */
const PAD_MM = 1.3;
/** Beside a legend there is less: on a thumb key that stands askew every bit of its size counts. */
const TEXT_PAD_MM = 0.8;
const LADDER = 0.31;
const MOST_RUNG_MM = 3.8;
const TAP_ALONE = 0.66;
const TAP_OVER_HOLD = 0.44;
const HOLD = 0.24;

/** Where the tap half of a key ends and its hold half begins, as a part of the cap's height from the top. */
export const TAP_HALF = 0.6;

/** What is drawn on a key while a layer is in front. */
export function keyScene(key: BoardKey, source: KeySceneSource): KeyScene {
  const { keymap, frontLayer } = source;
  const front = keymap.layers.find((layer) => layer.id === frontLayer);
  const own = front && bindingOn(front, key.id);
  const shown = own ?? fallenThrough(key.id, source);
  const ladder = source.withoutLadder !== true && keymap.layers.length > 1 ? key.width * LADDER : 0;
  const space = { x: (-ladder - (ladder > 0 ? 0.3 : 0)) / 2, width: key.width - ladder - 2 * TEXT_PAD_MM };
  const hold = glyphOf(shown?.hold, holdSpace(key, space), source);
  const isOver = shown?.hold !== undefined;
  return {
    id: key.id,
    x: key.x,
    y: key.y,
    rotation: key.rotation,
    width: key.width,
    height: key.height,
    home: key.home,
    standing: standingOf(own),
    tap: glyphOf(shown?.tap, tapSpace(key, space, isOver), source, shown?.onShift),
    hold,
    holdLine: isOver ? { x: space.x - space.width / 2, y: key.height * 0.13, width: space.width } : null,
    rungs: ladder > 0 ? rungsOf(key, source, ladder) : [],
    bound: own !== undefined,
    notes: openNotesAbout(keymap, key.id).length,
  };
}

/** The binding met below the layer in front while only it and what brings it on are on (rule S12). */
function fallenThrough(key: KeyId, { keymap, frontLayer }: KeySceneSource): Binding | undefined {
  const on = layersBelow(keymap.layers, frontLayer);
  return on.map((layer) => bindingOn(layer, key)).find((binding) => binding !== undefined);
}

function layersBelow(layers: readonly Layer[], front: LayerId): readonly Layer[] {
  const at = layers.findIndex((layer) => layer.id === front);
  const isOn = new Set<LayerId>([front, layers[0]?.id ?? front, ...(layers[at]?.onWhile ?? [])]);
  return layers
    .slice(0, Math.max(at, 0))
    .filter((layer) => isOn.has(layer.id))
    .reverse();
}

function standingOf(binding: Binding | undefined): Standing {
  if (binding === undefined) return 'falls';
  return binding.tap?.do === 'nothing' && binding.hold === undefined ? 'blank' : 'own';
}

type Space = TextSpace & { readonly x: number; readonly y: number };

function tapSpace(key: BoardKey, { x, width }: { x: number; width: number }, overHold: boolean): Space {
  const height = key.height * (overHold ? TAP_OVER_HOLD : TAP_ALONE);
  const y = overHold ? -key.height * 0.13 : 0;
  return { x, y, width, height, most: 7.6, least: 2.2 };
}

function holdSpace(key: BoardKey, { x, width }: { x: number; width: number }): Space {
  return { x, y: key.height * 0.275, width, height: key.height * HOLD, most: 3.6, least: 1.8 };
}

function glyphOf(
  action: Action | undefined,
  space: Space,
  source: KeySceneSource,
  onShift?: ShiftedAction,
): Glyph | null {
  if (action === undefined) return null;
  const text = tapLegend(action, onShift, source);
  if (text === '') return null;
  const leadsTo =
    action.do === 'layer' ? source.keymap.layers.findIndex((layer) => layer.id === action.layer) : -1;
  return { ...fitText(text, space), x: space.x, y: space.y, leadsTo: leadsTo < 0 ? null : leadsTo };
}

/** From the base layer's rung at the foot upwards, as the layers lie on each other; each layer always at the same. */
function rungsOf(key: BoardKey, source: KeySceneSource, width: number): readonly Rung[] {
  const { layers } = source.keymap;
  if (layers.length < 2) return [];
  const { hiddenRungs = [], frontLayer } = source;
  const shown = layers
    .map((layer, index) => ({ layer, index }))
    .filter(({ layer, index }) => layer.id === frontLayer || !hiddenRungs.includes(index));
  const height = Math.min(MOST_RUNG_MM, (key.height - 2 * PAD_MM) / shown.length);
  const x = key.width / 2 - width - PAD_MM * 0.6;
  const foot = Math.min(key.height / 2 - PAD_MM, (height * shown.length) / 2);
  return shown.map(({ layer, index }, at) => {
    const y = foot - height * (at + 1);
    const binding = bindingOn(layer, key.id);
    const isFront = layer.id === frontLayer;
    const space = { x: x + width / 2 + 0.35, y: y + height / 2, width: width - 1.3, height: height * 0.95 };
    return {
      layer: index,
      front: isFront,
      standing: standingOf(binding),
      glyph: isFront
        ? null
        : glyphOf(binding?.tap ?? binding?.hold, { ...space, most: 3, least: 1.2 }, source),
      withHold: binding?.tap !== undefined && binding.hold !== undefined,
      x,
      y: y + height * 0.06,
      width,
      height: height * 0.88,
    };
  });
}
