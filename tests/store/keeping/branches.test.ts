import { beforeEach, describe, expect, test } from 'vitest';
import { ok } from '../../../src/core/base/result.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { useBench } from '../../../src/store/bench.ts';
import { SAVE_AFTER_MS } from '../../../src/store/keeping/saver.ts';
import { bench, named, rename, tab } from './tab.ts';

beforeEach(() => useBench.setState(useBench.getInitialState()));

const replaced = (keymap: Keymap) =>
  ok({ edit: 'replace-design', title: 'Bring both together', keymap } as const);

/** A tab that shows a design which another tab holds. */
async function second() {
  const scene = tab();
  await scene.shelf.write('a', named('Theirs'), 1);
  scene.elsewhere.add('a');
  await scene.designs().start();
  return scene;
}

describe('a copy made because another tab has the design', () => {
  test('knows what it is a copy of, also after it was closed and opened again', async () => {
    const { designs } = await second();
    await designs().openCopy();
    expect(designs().branch).toMatchObject({
      of: 'a',
      ofName: 'Theirs',
      base: { name: 'Theirs' },
      wasOvertaken: false,
    });
    await designs().openDesign('a');
    expect(designs().branch).toBeNull();
    await designs().openDesign('new-1');
    expect(designs().branch).toMatchObject({ of: 'a' });
  });

  test('brought together: the original is taken over with its last state, the copy becomes a version of it', async () => {
    const { designs, shelf, saved, versions } = await second();
    await designs().openCopy();
    bench().edit({ edit: 'set-notes', notes: 'mine' });
    await shelf.write('a', named('Theirs, last'), 2);
    expect((await designs().readOriginal())?.name).toBe('Theirs, last');
    let met = '';
    const problem = await designs().bringTogether((original) => {
      met = original.name;
      return replaced({ ...original, notes: 'mine' });
    });
    expect([problem, met]).toEqual([null, 'Theirs, last']);
    expect(bench()).toMatchObject({
      designId: 'a',
      readOnly: false,
      keymap: { name: 'Theirs, last', notes: 'mine' },
    });
    expect(await saved('a')).toBe('Theirs, last');
    expect(designs().designs.map(({ id }) => id)).toEqual(['a']);
    expect(versions).toMatchObject([{ id: 'a', keymap: { name: 'Theirs, copy', notes: 'mine' } }]);
    bench().undo();
    expect(bench().keymap).not.toHaveProperty('notes');
  });

  test('not brought together where that is refused: the copy is open as before', async () => {
    const { designs, saved } = await second();
    await designs().openCopy();
    rename('Mine');
    const problem = await designs().bringTogether(() => ({ ok: false, problem: 'It changed meanwhile.' }));
    expect(problem).toBe('It changed meanwhile.');
    expect(bench()).toMatchObject({ designId: 'new-1', keymap: { name: 'Mine' }, readOnly: false });
    expect(await saved('a')).toBe('Theirs');
  });

  test('kept apart it is a design like any other', async () => {
    const { designs } = await second();
    await designs().openCopy();
    await designs().keepApart();
    await designs().openDesign('a');
    await designs().openDesign('new-1');
    expect(designs().branch).toBeNull();
    expect(await designs().bringTogether(replaced)).toMatch(/no copy/);
  });

  test('whose original is gone stands on its own', async () => {
    const { designs, shelf } = await second();
    await designs().openCopy();
    await shelf.remove('a');
    await designs().openDesign('new-1');
    expect(designs().branch?.ofName ?? null).toBe('Theirs');
    expect(await designs().readOriginal()).toBeNull();
    expect(await designs().bringTogether(replaced)).toMatch(/cannot be opened/);
  });
});

describe('changes that another tab overtook', () => {
  test('a tab that is robbed writes nothing over the other, and keeps what was waiting as a copy', async () => {
    const { designs, guard, saved, timer, elsewhere } = tab();
    await designs().start();
    rename('Waiting');
    elsewhere.add('new-1');
    guard().lost('new-1');
    timer.pass(SAVE_AFTER_MS);
    await expect.poll(() => designs().branch?.wasOvertaken).toBe(true);
    await designs().flush();
    expect(bench()).toMatchObject({ designId: 'new-2', readOnly: false, keymap: { name: 'Waiting, copy' } });
    expect(await saved('new-1')).toBe('Demonstration');
    expect(await saved('new-2')).toBe('Waiting, copy');
    expect(designs().branch).toMatchObject({ of: 'new-1', base: { name: 'Demonstration' } });
  });

  test('a tab that is robbed with nothing waiting only looks on', async () => {
    const { designs, guard } = tab();
    await designs().start();
    guard().lost('new-1');
    expect(bench()).toMatchObject({ designId: 'new-1', readOnly: true });
    expect(designs().designs).toHaveLength(1);
  });

  test('without locks, what somebody else wrote meanwhile is not written over', async () => {
    const { designs, shelf, saved } = tab();
    await designs().start();
    await shelf.write('new-1', named('From another tab'), 500);
    rename('From this tab');
    await designs().flush();
    await expect.poll(() => designs().branch?.wasOvertaken).toBe(true);
    await designs().flush();
    expect(await saved('new-1')).toBe('From another tab');
    expect(await saved('new-2')).toBe('From this tab, copy');
  });

  test('a design that another tab changed since it was open here can be renamed from the list', async () => {
    const { designs, shelf, saved } = tab();
    await designs().start();
    await designs().addDesign(named('Second'));
    await shelf.write('new-1', named('From another tab'), 500);
    await designs().rename('new-1', 'Renamed');
    expect(await saved('new-1')).toBe('Renamed');
    expect(designs().designs).toHaveLength(2);
  });
});
