import { beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../src/store/bench.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { SAVE_AFTER_MS } from '../../../src/store/keeping/saver.ts';
import { Shelf } from '../../../src/store/keeping/shelf.ts';
import { sample } from '../sample.ts';
import { bench, named, rename, tab } from './tab.ts';

beforeEach(() => useBench.setState(useBench.getInitialState()));

describe('keeping designs', () => {
  test('the first visit opens the demonstration and keeps it', async () => {
    const { designs, saved, memory } = tab();
    await designs().start();
    expect(designs().status).toBe('ready');
    expect(bench()).toMatchObject({ designId: 'new-1', readOnly: false });
    expect(await saved('new-1')).toBe('Demonstration');
    expect(memory.id).toBe('new-1');
  });

  test('a change is on the shelf a moment later, and there when the page is loaded again', async () => {
    const { designs, timer, values, saved } = tab();
    await designs().start();
    rename('Changed');
    expect(designs().saving.state).toBe('pending');
    timer.pass(SAVE_AFTER_MS);
    await designs().flush();
    expect(designs().saving.state).toBe('saved');
    expect(await saved('new-1')).toBe('Changed');
    useBench.setState(useBench.getInitialState());
    await tab(values).designs().start();
    expect(bench().keymap.name).toBe('Changed');
  });

  test('undo and redo are saved like any change', async () => {
    const { designs, saved } = tab();
    await designs().start();
    rename('Changed');
    await designs().flush();
    bench().undo();
    await designs().flush();
    expect(await saved('new-1')).toBe('Demonstration');
  });

  test('a tab opens again what it had open itself, before what any tab had open last', async () => {
    const values = memoryKeyValue();
    const shelf = new Shelf(values);
    await shelf.write('mine', named('Mine'), 1);
    await shelf.write('theirs', named('Theirs'), 2);
    await shelf.setLastOpen('theirs');
    await tab(values, { id: 'mine' }).designs().start();
    expect(bench().keymap.name).toBe('Mine');
    await shelf.setLastOpen('theirs');
    await tab(values).designs().start();
    expect(bench().keymap.name).toBe('Theirs');
  });

  test('an imported design lies beside the others under an id of its own', async () => {
    const { designs } = tab();
    await designs().start();
    await designs().addDesign(named('Demonstration'));
    expect(designs().designs.map(({ id }) => id)).toEqual(['new-2', 'new-1']);
    expect(bench().designId).toBe('new-2');
  });

  test('what was changed just before another design is opened is not lost', async () => {
    const { designs, saved } = tab();
    await designs().start();
    await designs().addDesign(named('Second'));
    rename('Second, changed');
    await designs().openDesign('new-1');
    expect(await saved('new-2')).toBe('Second, changed');
    expect(bench().keymap.name).toBe('Demonstration');
  });

  test('a duplicate has the next free name and is opened', async () => {
    const { designs } = tab();
    await designs().start();
    await designs().duplicate('new-1');
    await designs().duplicate('new-2');
    expect(bench().keymap.name).toBe('Demonstration, copy 2');
    expect(designs().designs).toHaveLength(3);
  });

  test('renaming the open design can be undone; renaming another changes what is kept', async () => {
    const { designs, saved } = tab();
    await designs().start();
    await designs().addDesign(named('Second'));
    await designs().rename('new-2', 'Open one');
    expect(bench().past).toHaveLength(1);
    await designs().rename('new-1', 'Other one');
    expect(await saved('new-1')).toBe('Other one');
    expect(designs().designs.map(({ name }) => name)).toContain('Other one');
  });

  test('deleting the open design opens another; deleting the last one the demonstration', async () => {
    const { designs } = tab();
    await designs().start();
    await designs().addDesign(named('Second'));
    await designs().remove('new-2');
    expect(bench().designId).toBe('new-1');
    await designs().remove('new-1');
    expect(bench()).toMatchObject({ designId: 'new-3', keymap: { name: 'Demonstration' } });
  });

  test('a change that was waiting does not bring a deleted design back', async () => {
    const { designs } = tab();
    await designs().start();
    rename('Changed');
    await designs().remove('new-1');
    expect(designs().designs.map(({ id }) => id)).toEqual(['new-2']);
  });
});

describe('what cannot be read', () => {
  const broken = { changedAt: 9, keymap: { ...sample, layers: 'none' } };

  test('at the start, another design is opened and the broken one is told and left', async () => {
    const { designs, values, shelf } = tab();
    await shelf.write('good', named('Good'), 1);
    await values.set('design:bad', broken);
    await shelf.setLastOpen('bad');
    await designs().start();
    expect(bench().keymap.name).toBe('Good');
    expect(designs().damaged).toMatchObject({ id: 'bad', name: 'Four keys' });
    expect(await values.get('design:bad')).toEqual(broken);
    designs().closeDamaged();
    expect(designs().damaged).toBeNull();
  });

  test('where nothing else is kept, the demonstration is opened beside it', async () => {
    const { designs, values } = tab();
    await values.set('design:bad', broken);
    await designs().start();
    expect(bench().keymap.name).toBe('Demonstration');
    expect(designs().damaged?.problems.length).toBeGreaterThan(0);
    expect(await values.get('design:bad')).toEqual(broken);
  });

  test('opening it later leaves the open design as it is', async () => {
    const { designs, values } = tab();
    await designs().start();
    rename('Being edited');
    await values.set('design:bad', broken);
    await designs().openDesign('bad');
    expect(bench()).toMatchObject({ designId: 'new-1', keymap: { name: 'Being edited' }, readOnly: false });
    expect(designs().damaged?.id).toBe('bad');
  });
});

describe('two tabs on one design', () => {
  async function second() {
    const scene = tab();
    await scene.shelf.write('a', named('Theirs'), 1);
    scene.elsewhere.add('a');
    await scene.designs().start();
    return scene;
  }

  test('the second one says so, refuses edits and writes nothing', async () => {
    const { designs, saved } = await second();
    expect(designs().heldElsewhere).toBe(true);
    rename('Overwritten');
    await designs().flush();
    expect(await saved('a')).toBe('Theirs');
    expect(bench().notices).toMatchObject([{ tone: 'refused' }]);
  });

  test('a copy opened here is a design of its own and can be changed', async () => {
    const { designs, saved } = await second();
    await designs().openCopy();
    rename('My own');
    await designs().flush();
    expect(designs().heldElsewhere).toBe(false);
    expect(await saved('a')).toBe('Theirs');
    expect(await saved('new-1')).toBe('My own');
  });

  test('taking over reads what the other tab wrote last, and writes from then on', async () => {
    const { designs, shelf, saved } = await second();
    await shelf.write('a', named('Theirs, last'), 2);
    await designs().takeOver();
    expect(bench()).toMatchObject({ readOnly: false, keymap: { name: 'Theirs, last' } });
    rename('Mine now');
    await designs().flush();
    expect(await saved('a')).toBe('Mine now');
  });

  test('the tab that gives up writes its last change and no more', async () => {
    const { designs, guard, saved } = tab();
    await designs().start();
    rename('Last change');
    await guard().givingUp('new-1');
    expect(await saved('new-1')).toBe('Last change');
    expect(designs().heldElsewhere).toBe(true);
    rename('Too late');
    await designs().flush();
    expect(await saved('new-1')).toBe('Last change');
  });

  test('when the other tab is gone, its last state is opened here for editing', async () => {
    const { designs, guard, shelf } = await second();
    await shelf.write('a', named('Theirs, last'), 2);
    guard().gained('a');
    await expect.poll(() => bench().keymap.name).toBe('Theirs, last');
    expect(designs().heldElsewhere).toBe(false);
    expect(bench().readOnly).toBe(false);
  });

  test('what another tab holds is neither renamed nor deleted from here', async () => {
    const { designs, shelf, elsewhere, saved } = tab();
    await shelf.write('b', named('Theirs'), 1);
    await shelf.write('a', named('Mine'), 2);
    elsewhere.add('b');
    await designs().start();
    await designs().rename('b', 'Renamed');
    await designs().remove('b');
    expect(await saved('b')).toBe('Theirs');
    expect(bench().notices.map(({ tone }) => tone)).toEqual(['refused', 'refused']);
  });
});

describe('a design that comes with a link', () => {
  test('is kept beside the others and opened', async () => {
    const { designs } = tab();
    await designs().start();
    expect(await designs().addOrFind(named('Linked'))).toBe('added');
    expect(bench()).toMatchObject({ designId: 'new-2', keymap: { name: 'Linked' } });
    expect(designs().designs.map(({ name }) => name)).toEqual(['Linked', 'Demonstration']);
  });

  test('is found again where it is kept already, and not where the kept one has been changed', async () => {
    const { designs } = tab();
    await designs().start();
    await designs().addOrFind(named('Linked'));
    await designs().openDesign('new-1');
    expect(await designs().addOrFind(named('Linked'))).toBe('kept before');
    expect(bench().designId).toBe('new-2');
    bench().edit({ edit: 'set-notes', notes: 'changed' });
    expect(await designs().addOrFind(named('Linked'))).toBe('added');
    expect(designs().designs).toHaveLength(3);
  });
});
