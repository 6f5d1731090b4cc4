import { type Code, isModifier } from '../keymap/codes.ts';
import type { ChordId, KeyId, LayerId } from '../keymap/types.ts';
import type { Run } from './run.ts';

/** How a design stands at a moment of a run. */
export interface StateAt {
  readonly keysDown: readonly KeyId[];
  /** Lowest first; the base layer is always among them. */
  readonly layersOn: readonly LayerId[];
  readonly modifiersOn: readonly Code[];
  /** Keys that may yet become a chord, and which. */
  readonly waits: { readonly keys: readonly KeyId[]; readonly chords: readonly ChordId[] } | null;
  /** The key or the firing of which tap or hold is not settled. */
  readonly open: { readonly key: KeyId } | { readonly chord: ChordId } | null;
}

/** The state right after everything that happened up to and at t, ms. Costs a pass over the run. */
export function stateAt(run: Run, t: number): StateAt {
  return { ...decidedAt(run, t), modifiersOn: modifiersAt(run, t), keysDown: keysDownAt(run, t) };
}

function keysDownAt({ presses }: Run, t: number): readonly KeyId[] {
  return presses.filter(({ down, up }) => down <= t && (up === null || up > t)).map(({ key }) => key);
}

function modifiersAt({ outputs }: Run, t: number): readonly Code[] {
  const on = new Set<Code>();
  for (const { t: at, type, code } of outputs) {
    if (at > t) break;
    if (!isModifier(code)) continue;
    if (type === 'press') on.add(code);
    else on.delete(code);
  }
  return [...on];
}

function decidedAt({ decisions, keymap }: Run, t: number): Pick<StateAt, 'layersOn' | 'waits' | 'open'> {
  const on = new Set<LayerId>();
  let waits: StateAt['waits'] = null;
  let open: StateAt['open'] = null;
  for (const { t: at, what, key, chord, layer, data } of decisions) {
    if (at > t) break;
    if (what === 'layer-on' && layer !== undefined) on.add(layer);
    else if (what === 'layer-off' && layer !== undefined) on.delete(layer);
    else if (what === 'waiting') waits = { keys: data?.keys ?? [], chords: data?.chords ?? [] };
    else if (what === 'chord' || what === 'no-chord') waits = null;
    else if (what === 'open') open = key === undefined ? { chord: chord ?? '' } : { key };
    else if ((what === 'tap' || what === 'hold') && isOpen(open, key, chord)) open = null;
  }
  const layersOn = keymap.layers.filter(({ id }, index) => index === 0 || on.has(id)).map(({ id }) => id);
  return { layersOn, waits, open };
}

function isOpen(open: StateAt['open'], key: KeyId | undefined, chord: ChordId | undefined): boolean {
  if (open === null) return false;
  return 'key' in open ? open.key === key : key === undefined && open.chord === chord;
}
