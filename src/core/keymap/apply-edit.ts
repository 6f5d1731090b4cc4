import { fail, ok, type Result } from '../base/result.ts';
import type { Edit, EditOutcome } from './edit.ts';
import {
  bind,
  fillLayer,
  moveBinding,
  setBinding,
  setOnShift,
  swapBindings,
  unbind,
} from './edits/bindings.ts';
import { deleteKey, setBoard } from './edits/board.ts';
import { addChord, changeChord, deleteChord } from './edits/chords.ts';
import { renameDesign, replaceDesign, setHosts, setNeeds, setNotes } from './edits/design.ts';
import { addDiaryNote, changeDiaryNote, deleteDiaryNote, tickDiaryNote } from './edits/diary.ts';
import { duplicateLayer, moveLayer } from './edits/layer-order.ts';
import { addLayer, deleteLayer, renameLayer, setOnWhile } from './edits/layers.ts';
import { type Edited, type EditNamed, made, type NameKey } from './edits/outcome.ts';
import { setBindingTiming, setTiming } from './edits/timing.ts';
import { withCharsInNfc } from './nfc.ts';
import { readProblem } from './problem.ts';
import type { Keymap } from './types.ts';
import { validityProblems } from './validity.ts';

const byId: NameKey = (_, key) => key;

type Makers = {
  readonly [Name in Edit['edit']]: (keymap: Keymap, edit: EditNamed<Name>, nameKey: NameKey) => Edited;
};

const MAKERS: Makers = {
  'rename-design': renameDesign,
  'set-notes': setNotes,
  bind,
  'set-on-shift': setOnShift,
  unbind,
  'set-binding': setBinding,
  'move-binding': moveBinding,
  'swap-bindings': swapBindings,
  'set-binding-timing': setBindingTiming,
  'set-timing': setTiming,
  'fill-layer': fillLayer,
  'add-layer': addLayer,
  'rename-layer': renameLayer,
  'delete-layer': deleteLayer,
  'move-layer': moveLayer,
  'duplicate-layer': duplicateLayer,
  'set-on-while': setOnWhile,
  'add-chord': addChord,
  'change-chord': changeChord,
  'delete-chord': deleteChord,
  'set-board': setBoard,
  'delete-key': deleteKey,
  'set-hosts': setHosts,
  'set-needs': setNeeds,
  'add-diary-note': addDiaryNote,
  'change-diary-note': changeDiaryNote,
  'tick-diary-note': tickDiaryNote,
  'delete-diary-note': deleteDiaryNote,
  'replace-design': replaceDesign,
  several,
};

function make<Name extends Edit['edit']>(keymap: Keymap, edit: EditNamed<Name>, nameKey: NameKey): Edited {
  const maker: Makers[Name] = MAKERS[edit.edit];
  return maker(keymap, edit, nameKey);
}

/** Makes edits one after another as one step; if one is refused, all are. */
function several(keymap: Keymap, { title, edits }: EditNamed<'several'>, nameKey: NameKey): Edited {
  let now = keymap;
  const alongside: string[] = [];
  for (const edit of edits) {
    const step = make(now, edit, nameKey);
    if (!step.ok) return step;
    now = step.value.keymap;
    alongside.push(...step.value.alongside);
  }
  return made(now, title, alongside);
}

/**
 * Makes an edit: the new keymap, the name of the step, and in sentences what was taken along. The keymap that is
 * handed in stays as it is, and a valid one stays valid: what does not exist, or breaks a limit or a rule of the
 * format, is refused with a sentence. A keymap made in memory that is broken already may stay so, but an edit never
 * adds to what is wrong. An edit that changes nothing gives back the same object. `nameKey`: what the sentences call a
 * key; its id where nobody says.
 */
export function applyEdit(keymap: Keymap, edit: Edit, nameKey: NameKey = byId): Result<EditOutcome, string> {
  const step = make(keymap, edit, nameKey);
  if (!step.ok || step.value.keymap === keymap) return step;
  const next = withCharsInNfc(step.value.keymap);
  const problems = validityProblems(next);
  const [first] = problems;
  if (first && problems.length > validityProblems(keymap).length) return fail(readProblem(first).sentence);
  return ok({ ...step.value, keymap: next });
}
