import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { diagnoseBoard } from '../../../src/core/check/diagnose-board.ts';
import { checkPlan } from '../../../src/core/check/steps.ts';
import { walkOf } from '../../../src/core/check/walk.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { shippedTable } from '../host/shipped-tables.ts';
import { walked } from './faulty-board.ts';

const DEMOS = ['beacon-log', 'kiln-ledger', 'two-shore-almanac', 'box-of-faults'];

function demo(name: string): Keymap {
  const read = readKeymap(readFileSync(`demo-layouts/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence);
  return read.value;
}

test.each(DEMOS.flatMap((name) => ['us', 'fr'].map((host) => [name, host] as const)))(
  'a right board of %s on a computer with %s gives right at every step and no fault',
  (name, table) => {
    const keymap = demo(name);
    const host = hostFromTable(shippedTable(table));
    const checked = walked(keymap, host, walkOf(keymap, checkPlan(keymap, host).steps));
    expect(checked.length).toBeGreaterThan(30);
    expect(checked.filter(({ result }) => result.verdict !== 'right')).toEqual([]);
    expect(diagnoseBoard(keymap, host, checked)).toEqual([]);
  },
);
