import { readKeymap } from '../core/keymap/read.ts';
import type { Keymap } from '../core/keymap/types.ts';

/** A demonstration design as it comes with the page. */
export interface DemoDesign {
  /** Its file name without the ending. */
  readonly id: string;
  readonly keymap: Keymap;
}

/** The design that the page opens on at the very first visit. */
const FIRST = 'beacon-log';

const files = import.meta.glob<string>('../../demo-layouts/*.json', { query: '?raw', import: 'default' });

/** All demonstration designs, the one that the page opens on first, the others by id. Each is loaded when asked for. */
export async function loadDemoDesigns(): Promise<readonly DemoDesign[]> {
  const ids = Object.keys(files).map(idOf);
  const order = ids.toSorted((one, other) => rank(one) - rank(other) || (one < other ? -1 : 1));
  return Promise.all(order.map(async (id) => ({ id, keymap: await loadDemoDesign(id) })));
}

/** The demonstration design of the first visit. */
export function loadFirstDesign(): Promise<Keymap> {
  return loadDemoDesign(FIRST);
}

async function loadDemoDesign(id: string): Promise<Keymap> {
  const load = Object.entries(files).find(([path]) => idOf(path) === id)?.[1];
  if (load === undefined) throw new Error(`There is no demonstration design "${id}".`);
  const read = readKeymap(await load());
  if (!read.ok) throw new Error(`The demonstration design "${id}": ${read.problem[0]?.sentence}`);
  return read.value;
}

function rank(id: string): number {
  return id === FIRST ? 0 : 1;
}

function idOf(path: string): string {
  return path.replace(/^.*\//, '').replace(/\.json$/, '');
}
