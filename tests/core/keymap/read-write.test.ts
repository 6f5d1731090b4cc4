import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { checkKeymap, readKeymap } from '../../../src/core/keymap/read.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';

describe('what is written is read back equal', () => {
  test.prop([keymapArbitrary()], { numRuns: 500 })('for random keymaps', (keymap) => {
    expect(checkKeymap(keymap)).toEqual({ ok: true, value: keymap });
    const text = writeKeymap(keymap);
    expect(readKeymap(text)).toEqual({ ok: true, value: { $schema: 'neutral-keymap.schema.json', ...keymap } });
  });
});
