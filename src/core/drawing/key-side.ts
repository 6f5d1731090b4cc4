import type { Action, KeyId, Layer, Side } from '../keymap/types.ts';
import { fitLines, type LineSpace } from './fit-lines.ts';
import { type KeyMark, underline } from './key-shapes.ts';
import { centred, type Ink } from './sheet-marks.ts';
import type { NoteBook } from './sheet-notes.ts';
import { leadsTo, type SheetSource } from './sheet-source.ts';

/** A space on a cap, by its middle. */
export interface SideSpace extends LineSpace {
  readonly x: number;
  readonly y: number;
}

/** What is to be written: one side of a binding, in the wordings that may stand for it. */
export interface WrittenSide {
  readonly key: KeyId;
  readonly layer: Layer;
  readonly side: Side;
  readonly action: Action;
  readonly wordings: readonly string[];
}

/** A side of a binding in its space, or the sign of a note that spells it out; nothing where even that has no room. */
export function sideMarks(
  what: WrittenSide,
  space: SideSpace,
  source: SheetSource,
  notes: NoteBook,
): readonly KeyMark[] {
  const written = textMarks(what.wordings, space, source, 'ink');
  if (written === null)
    return signMarks(notes.add(what.key, what.layer, what.side, what.action, source), space, source);
  const layer = leadsTo(what.action, source.keymap);
  if (layer === null) return written.marks;
  const look = { fill: `layer-${layer}`, height: 0.5 } as const;
  return [underline(source.type, written, space.x, space.y, look), ...written.marks];
}

/** The first wording that fits; null where none does. */
export function textMarks(wordings: readonly string[], space: SideSpace, source: SheetSource, ink: Ink) {
  const fitted = fitLines(source.type, 'sans', wordings, space);
  if (fitted === null) return null;
  const look = { face: 'sans', sizePt: fitted.sizePt, ink } as const;
  return { ...fitted, marks: centred(source.type, fitted.lines, space.x, space.y, look) };
}

const MOST_SIGN_PT = 8.5;

/** The sign of a note, where it has room. */
function signMarks(sign: string, space: SideSpace, { type }: SheetSource): readonly KeyMark[] {
  const fitted = fitLines(type, 'italic', [sign], { ...space, mostPt: Math.min(space.mostPt, MOST_SIGN_PT) });
  if (fitted === null) return [];
  return centred(type, fitted.lines, space.x, space.y, {
    face: 'italic',
    sizePt: fitted.sizePt,
    ink: 'muted',
  });
}
