import type { BoardDraft } from '../core/board/draft.ts';
import { boardSchema } from '../core/keymap/schema.ts';
import type { KeyValue } from './keeping/key-value.ts';

/** What is kept of the work on a board: where it stands, without the steps that led there. */
export interface KeptWork {
  readonly draft: BoardDraft;
  readonly alike: boolean;
}

/** Writes the work on a design's board, or takes it away. */
export async function keepWork(values: KeyValue, designId: string, work: KeptWork | null): Promise<void> {
  if (work === null) return values.del(designId);
  const { draft, alike } = work;
  await values.set(designId, { origin: draft.origin, board: draft.board, from: [...draft.from], alike });
}

/** The kept work on a design's board; null where there is none, or nothing that can be read. */
export async function keptWork(values: KeyValue, designId: string): Promise<KeptWork | null> {
  const kept = await values.get(designId);
  if (typeof kept !== 'object' || kept === null) return null;
  const [origin, board] = ['origin', 'board'].map((name) => boardSchema.safeParse(Reflect.get(kept, name)));
  const from: unknown = Reflect.get(kept, 'from');
  if (origin?.success !== true || board?.success !== true || !isPairs(from)) return null;
  const draft = { origin: origin.data, board: board.data, from: new Map(from) };
  return { draft, alike: Reflect.get(kept, 'alike') === true };
}

function isPairs(value: unknown): value is [string, string][] {
  const isPair = (pair: unknown) =>
    Array.isArray(pair) && pair.length === 2 && pair.every((id) => typeof id === 'string');
  return Array.isArray(value) && value.every(isPair);
}
