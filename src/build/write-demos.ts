/** Writes demo-layouts/ from the drawings in src/build/demos/. */
import { writeFileSync } from 'node:fs';
import { beaconLog } from './demos/beacon-log.ts';

for (const [file, keymap] of [['beacon-log', beaconLog]] as const) {
  writeFileSync(
    new URL(`../../demo-layouts/${file}.json`, import.meta.url),
    `${JSON.stringify(keymap, null, 2)}\n`,
  );
}
