/** Writes demo-layouts/ from the drawings in src/build/demos/: `npm run demos`. */
import { writeFileSync } from 'node:fs';
import { writeKeymap } from '../core/keymap/write.ts';
import { DEMOS } from './demos/demos.ts';

for (const [name, keymap] of Object.entries(DEMOS)) {
  writeFileSync(new URL(`../../demo-layouts/${name}.json`, import.meta.url), writeKeymap(keymap));
}
