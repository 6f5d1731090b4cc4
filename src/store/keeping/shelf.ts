import { fail, ok, type Result } from '../../core/base/result.ts';
import type { ReadProblem } from '../../core/keymap/problem.ts';
import { checkKeymap } from '../../core/keymap/read.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { KeyValue } from './key-value.ts';

/** One kept design as a list shows it; times are ms since 1970. */
export interface KeptDesign {
  readonly id: string;
  readonly name: string;
  readonly changedAt: number;
}

/** Why a kept design could not be opened. What was stored stays where it is. */
export interface Damage {
  readonly sentence: string;
  readonly problems: readonly ReadProblem[];
  readonly stored: unknown;
}

const RECORD = 'design:';
const INDEX = 'index';
const LAST_OPEN = 'last-open';

interface StoredRecord {
  readonly changedAt: number;
  readonly keymap: unknown;
}

/**
 * The kept designs. A record is written before the index that lists it, so that a crash between the two leaves
 * a record too many and never an entry without one; `list` takes up records that the index does not know.
 */
export class Shelf {
  readonly #values: KeyValue;

  constructor(values: KeyValue) {
    this.#values = values;
  }

  /** All kept designs, the one changed last first, those of equal time by name and then id. */
  async list(): Promise<readonly KeptDesign[]> {
    const [index, names] = await Promise.all([this.#index(), this.#values.names()]);
    const ids = names.filter((name) => name.startsWith(RECORD)).map((name) => name.slice(RECORD.length));
    const entries = ids.map((id) => index.find((entry) => entry.id === id) ?? this.#entryOf(id));
    return (await Promise.all(entries)).toSorted(
      (one, other) =>
        other.changedAt - one.changedAt || compare(one.name, other.name) || compare(one.id, other.id),
    );
  }

  /** Reads a kept design as strictly as a file; what is broken is told and left as it is. */
  async read(id: string): Promise<Result<Keymap, Damage>> {
    const stored = await this.#values.get(RECORD + id);
    if (!isRecord(stored)) {
      const sentence =
        stored === undefined
          ? 'This design is no longer kept here.'
          : 'What is stored under this design is no record of a design.';
      return fail({ sentence, problems: [], stored });
    }
    const read = checkKeymap(stored.keymap);
    if (read.ok) return ok(read.value);
    return fail({
      sentence: 'What is stored of this design cannot be read as a keymap.',
      problems: read.problem,
      stored: stored.keymap,
    });
  }

  /** When a kept design was written last, ms since 1970; null where there is no record of it. */
  async changedAt(id: string): Promise<number | null> {
    const stored = await this.#values.get(RECORD + id);
    return isRecord(stored) ? stored.changedAt : null;
  }

  /** Writes a design, the record first and then the index. */
  async write(id: string, keymap: Keymap, now: number): Promise<void> {
    await this.#values.set(RECORD + id, { changedAt: now, keymap });
    const others = (await this.#index()).filter((entry) => entry.id !== id);
    await this.#values.set(INDEX, [...others, { id, name: keymap.name, changedAt: now }]);
  }

  /** Takes a design off the shelf for good. */
  async remove(id: string): Promise<void> {
    await this.#values.del(RECORD + id);
    const others = (await this.#index()).filter((entry) => entry.id !== id);
    await this.#values.set(INDEX, others);
  }

  /** Which design was open last, in whichever tab; null where none was. */
  async lastOpen(): Promise<string | null> {
    const id = await this.#values.get(LAST_OPEN);
    return typeof id === 'string' ? id : null;
  }

  /** Remembers which design is open. */
  async setLastOpen(id: string): Promise<void> {
    await this.#values.set(LAST_OPEN, id);
  }

  async #index(): Promise<readonly KeptDesign[]> {
    const index = await this.#values.get(INDEX);
    return Array.isArray(index) ? index.filter(isEntry) : [];
  }

  async #entryOf(id: string): Promise<KeptDesign> {
    const stored = await this.#values.get(RECORD + id);
    const record = isRecord(stored) ? stored : { changedAt: 0, keymap: null };
    const name = isObject(record.keymap) && 'name' in record.keymap ? record.keymap.name : null;
    return {
      id,
      name: typeof name === 'string' ? name : 'A design that cannot be read',
      changedAt: record.changedAt,
    };
  }
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function isRecord(value: unknown): value is StoredRecord {
  return isObject(value) && 'keymap' in value && 'changedAt' in value && typeof value.changedAt === 'number';
}

function isEntry(value: unknown): value is KeptDesign {
  return (
    isObject(value) &&
    'id' in value &&
    typeof value.id === 'string' &&
    'name' in value &&
    typeof value.name === 'string' &&
    'changedAt' in value &&
    typeof value.changedAt === 'number'
  );
}

/** By code units: the order must not depend on the browser's language. */
function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
