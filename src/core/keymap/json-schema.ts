import * as z from 'zod/mini';
import { keymapSchema } from './schema.ts';

/**
 * The shape of a neutral keymap as a JSON Schema, draft 2020-12, made from the schema by which this program reads.
 * What only the reader checks is said in its description.
 */
export function keymapJsonSchema(): object {
  return {
    title: 'Neutral keymap, version 1',
    ...z.toJSONSchema(keymapSchema, { io: 'input', target: 'draft-2020-12' }),
  };
}
