import { checkKeymap } from '../../core/keymap/read.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { KeyValue } from './key-value.ts';

/** Where a copy comes from that was made because another tab had the design. */
export interface Branch {
  /** The id of the design that it is a copy of. */
  readonly of: string;
  /** The state that both began with. */
  readonly base: Keymap;
  /** What the copy was called at first; a name that nobody gave it is not to become the original's. */
  readonly name: string;
}

const RECORD = 'branch:';

/** Remembers of copies what they are copies of, so that both can be brought together again whenever that is wanted. */
export class Branches {
  readonly #values: Pick<KeyValue, 'get' | 'set' | 'del'>;

  constructor(values: Pick<KeyValue, 'get' | 'set' | 'del'>) {
    this.#values = values;
  }

  /** What a design is a copy of; null where it is none, or where that cannot be read. */
  async read(id: string): Promise<Branch | null> {
    const stored = await this.#values.get(RECORD + id);
    if (typeof stored !== 'object' || stored === null) return null;
    const { of, base, name } = stored as Partial<Record<keyof Branch, unknown>>;
    const read = checkKeymap(base);
    if (typeof of !== 'string' || typeof name !== 'string' || !read.ok) return null;
    return { of, base: read.value, name };
  }

  async write(id: string, branch: Branch): Promise<void> {
    await this.#values.set(RECORD + id, branch);
  }

  /** The copy stands on its own from now on, or is gone. */
  async remove(id: string): Promise<void> {
    await this.#values.del(RECORD + id);
  }
}
