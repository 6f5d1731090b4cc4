import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { withStep } from '../../../../src/store/history.ts';
import { backupText, readBackup } from '../../../../src/store/keeping/backup/backup-file.ts';
import { BACKUP_STEPS, historiesPart } from '../../../../src/store/keeping/backup/histories-part.ts';
import { packed, unpacked } from '../../../../src/store/keeping/backup/packed.ts';
import { planRestore } from '../../../../src/store/keeping/backup/restore.ts';
import { Histories } from '../../../../src/store/keeping/histories.ts';
import { memoryKeyValue } from '../../../../src/store/keeping/key-value.ts';
import { sample } from '../../sample.ts';

describe('packed values', () => {
  test('come back as they were, whatever they share', () => {
    void fc.assert(
      fc.property(
        fc.array(fc.jsonValue(), { maxLength: 4 }),
        fc.array(fc.nat(3), { maxLength: 8 }),
        (all, at) => {
          const inner = { all, again: at.map((index) => all[index % Math.max(1, all.length)] ?? null) };
          const value = { inner, also: [inner, inner.again] };
          const inFile: unknown = JSON.parse(JSON.stringify(packed(value)));
          expect(unpacked(inFile)).toEqual(JSON.parse(JSON.stringify(value)));
        },
      ),
    );
  });

  test('hold what is shared once', () => {
    const long = { text: 'x'.repeat(1000) };
    const file = JSON.stringify(packed(Array.from({ length: 50 }, () => ({ long }))));
    expect(file.length).toBeLessThan(3000);
  });

  const doubled = Array.from({ length: 40 }, (_, at) =>
    at === 0 ? [] : [{ $same: at - 1 }, { $same: at - 1 }],
  );
  test.each<[unknown, RegExp]>([
    [7, /nothing packed/],
    [{ parts: [], whole: { $same: 0 } }, /not there/],
    [{ parts: [[{ $same: 0 }]], whole: 1 }, /not there/],
    [{ parts: [], whole: { $same: 'length' } }, /not there/],
    [{ parts: doubled, whole: { $same: 39 } }, /more than can be kept/],
  ])('%#: what no page has packed is refused', (value, sentence) => {
    expect(() => unpacked(value)).toThrow(sentence);
  });
});

function browser() {
  const values = memoryKeyValue();
  const parts = [historiesPart(values)];
  const restore = async (text: string) => {
    const read = readBackup(text);
    if (!read.ok) throw new Error(read.problem);
    const plan = await planRestore(read.value, parts, () => 'new');
    await plan.carryOut(new Set());
    return plan.parts[0];
  };
  return { values, parts, histories: new Histories(values), restore };
}

/** A design named 0, 1, 2 and so on, one step each. */
function steps(count: number) {
  let history = withStep({ keymap: sample, past: [], future: [] }, 'first', { ...sample, name: '0' });
  for (let at = 1; at < count; at += 1)
    history = withStep(history, `to ${at}`, { ...sample, name: String(at) });
  return history;
}

describe('steps that can be undone', () => {
  test('come back, the last of them', async () => {
    const [from, to] = [browser(), browser()];
    const history = steps(BACKUP_STEPS + 7);
    await from.histories.write('a', history);
    const { text, spared } = await backupText(from.parts, 0);
    expect(spared).toEqual([]);
    expect(await to.restore(text)).toMatchObject({ added: [''], invalid: 0 });
    const read = await to.histories.read('a', history.keymap);
    expect(read.past.length).toBe(BACKUP_STEPS);
    expect(read.past.at(-1)).toEqual(history.past.at(-1));
  });

  test('what is here stays', async () => {
    const [from, to] = [browser(), browser()];
    await from.histories.write('a', steps(3));
    await to.histories.write('a', steps(2));
    expect(await to.restore((await backupText(from.parts, 0)).text)).toMatchObject({ stays: 1, added: [] });
    expect((await to.histories.read('a', steps(2).keymap)).past.length).toBe(2);
  });

  test('one with a keymap that cannot be read is left out', async () => {
    const [from, to] = [browser(), browser()];
    const history = steps(3);
    const torn = { ...sample, layers: 'torn' };
    await from.values.set('a', { ...history, past: [{ title: 'x', keymap: torn }, ...history.past] });
    expect(await to.restore((await backupText(from.parts, 0)).text)).toMatchObject({ invalid: 1 });
    expect(await to.values.names()).toEqual([]);
  });

  test('are spared where the file would be too large to be read again', async () => {
    const from = browser();
    await from.histories.write('a', steps(3));
    const { text, spared } = await backupText(from.parts, 0, 200);
    expect(spared).toEqual(['steps that can be undone']);
    expect(readBackup(text)).toMatchObject({ ok: true, value: { parts: new Map() } });
  });
});
