import { useStore } from 'zustand';
import { loadFirstDesign } from '../demo-designs.ts';
import { versions } from '../versions/versions.ts';
import { Branches } from './branches.ts';
import { makeDesigns } from './designs.ts';
import type { DesignsActions, DesignsState } from './designs-state.ts';
import { forgetDesign } from './forget-design.ts';
import { Histories } from './histories.ts';
import { indexedDbOrMemory } from './key-value.ts';
import { pageTimer } from './saver.ts';
import { Shelf } from './shelf.ts';
import { TabGuard } from './tab-guard.ts';

const TAB_MEMORY = 'handful open design';

const { values, keeps } = indexedDbOrMemory();
const histories = indexedDbOrMemory({ database: 'handful histories', store: 'histories' }).values;

/** The page's own keeping of designs. */
export const designs = makeDesigns({
  shelf: new Shelf(values),
  histories: new Histories(histories),
  branches: new Branches(values),
  forget: forgetDesign,
  keepVersion: (id, keymap, name) => versions.getState().keep(id, keymap, name),
  keeps,
  guard: (events) => new TabGuard(events),
  timer: pageTimer,
  now: () => Date.now(),
  newId: () => crypto.randomUUID(),
  firstDesign: loadFirstDesign,
  tabMemory: {
    read: () => sessionStorage.getItem(TAB_MEMORY),
    write: (id) => sessionStorage.setItem(TAB_MEMORY, id),
  },
});

/** Reads from the keeping of designs, drawn again when what is read changes. */
export function useDesigns<Part>(select: (state: DesignsState & DesignsActions) => Part): Part {
  return useStore(designs, select);
}

/** Asks back before the page is left while the last change could not be written. */
function askBeforeLosing(event: BeforeUnloadEvent): void {
  if (designs.getState().saving.state === 'failed') event.preventDefault();
}

/** Writes what is waiting whenever the page may be about to end: a hidden page can be closed without a word. */
export function saveBeforeLeaving(page: Window): () => void {
  const save = () => void designs.getState().flush();
  const hidden = () => {
    if (page.document.visibilityState === 'hidden') save();
  };
  page.addEventListener('beforeunload', askBeforeLosing);
  page.addEventListener('pagehide', save);
  page.document.addEventListener('visibilitychange', hidden);
  return () => {
    page.removeEventListener('beforeunload', askBeforeLosing);
    page.removeEventListener('pagehide', save);
    page.document.removeEventListener('visibilitychange', hidden);
  };
}
