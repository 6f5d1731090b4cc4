import { beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../src/store/bench.ts';
import { Histories, KEPT_STEPS } from '../../../src/store/keeping/histories.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { sample } from '../sample.ts';
import { bench, named, rename, tab } from './tab.ts';

beforeEach(() => useBench.setState(useBench.getInitialState()));

describe('the history', () => {
  const names = () => bench().past.map(({ title }) => title);

  test('survives a reload: what was done can be undone, what was undone redone', async () => {
    const first = tab();
    await first.designs().start();
    for (const name of ['One', 'Two', 'Three']) rename(name);
    bench().undo();
    await first.designs().flush();
    useBench.setState(useBench.getInitialState());
    await tab(first.values, { id: 'new-1' }, first.histories).designs().start();
    expect(bench()).toMatchObject({ keymap: { name: 'Two' } });
    bench().redo();
    expect(bench().keymap.name).toBe('Three');
    for (const name of ['Two', 'One', 'Demonstration']) {
      bench().undo();
      expect(bench().keymap.name).toBe(name);
    }
    expect(bench().past).toEqual([]);
  });

  test('comes back with each design, and none is mixed with another', async () => {
    const { designs } = tab();
    await designs().start();
    rename('First, changed');
    await designs().addDesign(named('Second'));
    rename('Second, changed');
    await designs().openDesign('new-1');
    expect(names()).toEqual(['Rename the design to First, changed']);
    bench().undo();
    expect(bench().keymap.name).toBe('Demonstration');
  });

  test('where the kept design is another, what the history ended with is one step back', async () => {
    const { designs, shelf } = tab();
    await designs().start();
    rename('Mine');
    await designs().addDesign(named('Second'));
    await shelf.write('new-1', named('Written without a history'), 99);
    await designs().openDesign('new-1');
    expect(names()).toEqual(['Rename the design to Mine', 'Changes made elsewhere']);
    bench().undo();
    expect(bench().keymap.name).toBe('Mine');
  });

  test('goes with its design, and so does all else that is kept of it', async () => {
    const { designs, histories, forgotten } = tab();
    await designs().start();
    rename('Changed');
    await designs().flush();
    expect(await histories.names()).toEqual(['new-1']);
    await designs().remove('new-1');
    // The demonstration that is opened instead has one of its own.
    expect([await histories.names(), forgotten]).toEqual([['new-2'], ['new-1']]);
  });

  test.each([['nonsense'], [{ past: 1 }], [{ keymap: { ...sample, version: 0 }, past: [], future: [] }]])(
    'what is stored as %j is as good as none',
    async (stored) => {
      const { designs, histories } = tab();
      await designs().start();
      await designs().addDesign(named('Second'));
      await histories.set('new-1', stored);
      await designs().openDesign('new-1');
      expect(bench()).toMatchObject({ designId: 'new-1', past: [], future: [] });
    },
  );

  test('keeps its nearest steps where there are too many', async () => {
    const values = memoryKeyValue();
    const step = (title: string) => ({ title, keymap: sample });
    const past = Array.from({ length: KEPT_STEPS + 50 }, (_, at) => step(`past ${at}`));
    const future = Array.from({ length: KEPT_STEPS + 50 }, (_, at) => step(`future ${at}`));
    const histories = new Histories(values);
    await histories.write('a', { keymap: sample, past, future });
    const kept = await histories.read('a', sample);
    expect([kept.past.length, kept.past.at(-1)?.title]).toEqual([KEPT_STEPS, `past ${KEPT_STEPS + 49}`]);
    expect([kept.future.length, kept.future[0]?.title]).toEqual([KEPT_STEPS, 'future 0']);
  });
});
