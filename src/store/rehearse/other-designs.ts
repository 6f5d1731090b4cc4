import type { Keymap } from '../../core/keymap/types.ts';
import { loadDemoDesigns } from '../demo-designs.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { Shelf } from '../keeping/shelf.ts';
import { designs } from '../keeping/use-designs.ts';

/** A design that can be held against the open one. */
export interface OtherDesign {
  readonly id: string;
  readonly title: string;
  readonly group: string;
  /** Null where it cannot be read. */
  read(): Promise<Keymap | null>;
}

const shelf = new Shelf(indexedDbOrMemory().values);

/** The kept designs but the one that is open, then the demonstrations. */
export async function otherDesigns(openId: string): Promise<readonly OtherDesign[]> {
  const kept = designs.getState().designs.filter(({ id }) => id !== openId);
  const demos = await loadDemoDesigns();
  return [
    ...kept.map(({ id, name }) => ({
      id,
      title: name,
      group: 'Your designs',
      read: async () => {
        const read = await shelf.read(id);
        return read.ok ? read.value : null;
      },
    })),
    ...demos.map(({ id, keymap }) => ({
      id: `demo ${id}`,
      title: keymap.name,
      group: 'Demonstrations',
      read: async () => keymap,
    })),
  ];
}
