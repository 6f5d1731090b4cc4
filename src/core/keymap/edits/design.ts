import { castDraft, produce } from 'immer';
import type { Keymap } from '../types.ts';
import { unpinned } from './diary-pins.ts';
import { type Edited, type EditNamed, made } from './outcome.ts';

/** Gives the design another name. */
export function renameDesign(keymap: Keymap, { name }: EditNamed<'rename-design'>): Edited {
  const next = produce(keymap, (draft) => {
    draft.name = name;
  });
  return made(next, `Rename the design to ${name}`);
}

/** Sets the free notes; an empty text takes the field away. */
export function setNotes(keymap: Keymap, { notes }: EditNamed<'set-notes'>): Edited {
  const next = produce(keymap, (draft) => {
    if (notes === '') delete draft.notes;
    else draft.notes = notes;
  });
  return made(next, 'Change the notes');
}

/** Sets the computers it is used on; characters are typed for the first. */
export function setHosts(keymap: Keymap, { hosts }: EditNamed<'set-hosts'>): Edited {
  const next = produce(keymap, (draft) => {
    draft.hosts = castDraft(hosts.map((host) => ({ ...host })));
  });
  return made(next, 'Change the computers');
}

/** Sets what the typist must be able to type. */
export function setNeeds(keymap: Keymap, { needs }: EditNamed<'set-needs'>): Edited {
  const next = produce(keymap, (draft) => {
    draft.needs = castDraft(needs);
  });
  return made(next, 'Change the needs');
}

/**
 * Puts another document in the place of the whole design, its name and notes included. Notes of its diary that are about
 * what it does not have stay as notes.
 */
export function replaceDesign(_: Keymap, { title, keymap }: EditNamed<'replace-design'>): Edited {
  const alongside: string[] = [];
  const next = produce(keymap, (draft) => {
    alongside.push(...unpinned(draft));
  });
  return made(next, title, alongside);
}
