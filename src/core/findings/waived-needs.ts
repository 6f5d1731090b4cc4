import { type Need, needText, parseNeed } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import type { FindList } from '../needs/needs-of.ts';
import type { Route } from '../routes/types.ts';

/** A need that the typist has let off. */
export interface WaivedNeed {
  readonly need: Need;
  /** The need in its one spelling. */
  readonly text: string;
  readonly why: string;
  /** Whether a known list or an own need asks for it. */
  readonly askedFor: boolean;
  readonly route: Route | null;
}

/** The needs let off, in order and each once; their routes are still to be found. */
export function waivedNeeds(keymap: Keymap, findList: FindList): readonly WaivedNeed[] {
  const entries = keymap.needs?.waived ?? [];
  if (entries.length === 0) return [];
  const asked = askedFor(keymap, findList);
  const found = new Map<string, WaivedNeed>();
  for (const { need: written, why } of entries) {
    const read = parseNeed(written);
    if (!read.ok) continue;
    const text = needText(read.value);
    if (!found.has(text)) {
      found.set(text, { need: read.value, text, why, askedFor: asked.has(text), route: null });
    }
  }
  return [...found.values()];
}

function askedFor(keymap: Keymap, findList: FindList): ReadonlySet<string> {
  const listed = (keymap.needs?.lists ?? []).flatMap((name) => findList(name)?.needs ?? []);
  const own = (keymap.needs?.own ?? []).flatMap((text) => {
    const read = parseNeed(text);
    return read.ok ? [read.value] : [];
  });
  return new Set([...listed, ...own].map(needText));
}
