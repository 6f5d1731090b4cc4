import type { Keymap } from '../../../src/core/keymap/types.ts';
import { useBench } from '../../../src/store/bench.ts';
import { Branches } from '../../../src/store/keeping/branches.ts';
import { makeDesigns } from '../../../src/store/keeping/designs.ts';
import { Histories } from '../../../src/store/keeping/histories.ts';
import { type KeyValue, memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { Shelf } from '../../../src/store/keeping/shelf.ts';
import type { GuardEvents } from '../../../src/store/keeping/tab-guard.ts';
import { sample } from '../sample.ts';
import { HandTimer } from './hand-timer.ts';

/** The sample design under a name. */
export const named = (name: string): Keymap => ({ ...sample, name });
/** What is on the bench. */
export const bench = () => useBench.getState();
/** Renames the open design. */
export const rename = (name: string) => bench().edit({ edit: 'rename-design', name });

/** One tab: `elsewhere` names the designs that another tab holds. */
export function tab(
  values: KeyValue = memoryKeyValue(),
  memory: { id: string | null } = { id: null },
  histories: KeyValue = memoryKeyValue(),
) {
  const forgotten: string[] = [];
  const versions: { id: string; name: string; keymap: Keymap }[] = [];
  const timer = new HandTimer();
  const shelf = new Shelf(values);
  const elsewhere = new Set<string>();
  let events: GuardEvents | null = null;
  let ids = 0;
  let clock = 0;
  const store = makeDesigns({
    shelf,
    histories: new Histories(histories),
    branches: new Branches(values),
    forget: async (id) => void forgotten.push(id),
    keepVersion: async (id, keymap, name) => void versions.push({ id, name, keymap }),
    timer,
    keeps: Promise.resolve(true),
    guard: (given) => {
      events = given;
      return {
        show: async (id) => !elsewhere.has(id),
        takeOver: async (id) => void elsewhere.delete(id),
        heldElsewhere: async (id) => elsewhere.has(id),
        tellListChanged: () => {},
      };
    },
    now: () => ++clock,
    newId: () => `new-${++ids}`,
    firstDesign: async () => named('Demonstration'),
    tabMemory: {
      read: () => memory.id,
      write: (id) => {
        memory.id = id;
      },
    },
  });
  const guard = () => {
    if (events === null) throw new Error('no guard was made');
    return events;
  };
  const saved = async (id: string) => {
    const read = await shelf.read(id);
    return read.ok ? read.value.name : read.problem.sentence;
  };
  return {
    values,
    histories,
    forgotten,
    versions,
    shelf,
    timer,
    elsewhere,
    guard,
    memory,
    saved,
    designs: store.getState,
    store,
  };
}
