import { describe, expect, test } from 'vitest';
import { usHost } from '../../../../src/core/host/us.ts';
import { layerRows } from '../../../../src/ui/board/cards/layer-rows.ts';
import { design } from '../sample.ts';

const rowsOf = (key: string) =>
  layerRows(key, { keymap: design(), host: usHost }).map(({ number, name, tap, hold }) => [
    number,
    name,
    tap,
    hold,
  ]);

describe('what a key’s card says of its layers', () => {
  test.each([
    [
      'R22',
      [
        [1, 'Symbols', '(', 'no hold'],
        [0, 'Base', 'j', 'Left Shift'],
      ],
    ],
    [
      'R24',
      [
        [1, 'Symbols', 'blank', 'no hold'],
        [0, 'Base', 'does nothing', 'no hold'],
      ],
    ],
    [
      'LT1',
      [
        [1, 'Symbols', 'falls through', 'no hold'],
        [0, 'Base', 'no tap', 'layer Symbols while held'],
      ],
    ],
  ])('%s, the highest layer first', (key, rows) => {
    expect(rowsOf(key)).toEqual(rows);
  });
});
