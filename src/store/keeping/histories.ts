import { samePlain } from '../../core/base/same-plain.ts';
import { FORMAT, VERSION } from '../../core/keymap/migrate.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { HistoryStep } from '../bench-state.ts';
import { type History, withStep } from '../history.ts';
import type { KeyValue } from './key-value.ts';

/** How many steps in either direction are kept beyond this visit. Steps share what they have in common, on the disk too. */
export const KEPT_STEPS = 200;

/** What a step is called that this browser's history knows nothing of, such as changes that came with a file. */
const UNKNOWN_STEP = 'Changes made elsewhere';

/** The histories of designs, kept by the design's id, so that undoing goes on where it was left. */
export class Histories {
  readonly #values: Pick<KeyValue, 'get' | 'set' | 'del'>;

  constructor(values: Pick<KeyValue, 'get' | 'set' | 'del'>) {
    this.#values = values;
  }

  /**
   * The history that leads to `keymap`. Where the kept one ends elsewhere (another browser tab wrote without it), what it
   * ended with is one more step back. Without a kept one, or where it cannot be read, there is nothing to undo.
   */
  async read(id: string, keymap: Keymap): Promise<History> {
    const none: History = { keymap, past: [], future: [] };
    const kept = await this.#values.get(id).then(readHistory, () => null);
    if (kept === null) return none;
    if (samePlain(kept.keymap, keymap)) return { ...kept, keymap };
    return withStep(kept, UNKNOWN_STEP, keymap);
  }

  /** Keeps a history, its farthest steps left out. */
  async write(id: string, { keymap, past, future }: History): Promise<void> {
    await this.#values.set(id, {
      keymap,
      past: past.slice(-KEPT_STEPS),
      future: future.slice(0, KEPT_STEPS),
    });
  }

  /** Forgets the history of a design that is gone. */
  async remove(id: string): Promise<void> {
    await this.#values.del(id);
  }
}

/**
 * A history as it was kept; null where it is none, or of another version of the format. Its keymaps were valid when they
 * were kept and are not read as strictly as a file again: hundreds of them would take seconds.
 */
export function readHistory(stored: unknown): History | null {
  if (!isObject(stored)) return null;
  const { keymap, past, future } = stored;
  if (!isKeymap(keymap) || !isSteps(past) || !isSteps(future)) return null;
  return { keymap, past, future };
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function isKeymap(value: unknown): value is Keymap {
  return isObject(value) && value.format === FORMAT && value.version === VERSION;
}

function isSteps(value: unknown): value is readonly HistoryStep[] {
  return (
    Array.isArray(value) &&
    value.every((step) => isObject(step) && typeof step.title === 'string' && isKeymap(step.keymap))
  );
}
