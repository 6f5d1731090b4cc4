import { writeFileSync } from 'node:fs';
import { keymapJsonSchema } from '../core/keymap/json-schema.ts';

/** Writes the published JSON Schema from the schema by which the program reads. */
writeFileSync('public/neutral-keymap.schema.json', `${JSON.stringify(keymapJsonSchema(), null, 2)}\n`);
