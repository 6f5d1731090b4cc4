import { describe, expect, test, vi } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { analysisOf } from '../../../src/store/analysis.ts';
import {
  foundCommands,
  foundFindings,
  foundKeys,
  foundLayers,
  foundNeeds,
} from '../../../src/ui/app/finder/findables.ts';
import { sample } from '../../store/sample.ts';

const asking = { ...sample, needs: { lists: [], own: ['!', '?', 'key:Tab'], waived: [] } };

describe('what can be found', () => {
  test('commands that can be given now', () => {
    const onSelect = vi.fn();
    const items = [
      { label: 'Import', onSelect },
      'line',
      { label: 'Closed', disabled: true, onSelect },
    ] as const;
    const found = foundCommands(items, 'designs');
    expect(found.map(({ label }) => label)).toEqual(['Import']);
    found[0]?.onChoose();
    expect(onSelect).toHaveBeenCalledOnce();
  });

  test('layers, by their names', () => {
    const show = vi.fn();
    foundLayers(sample.layers, show)[1]?.onChoose();
    expect(show.mock.calls).toEqual([['signs']]);
  });

  test('a need that is reached is lit and in hand; one that is missing is in hand', () => {
    const bench = { carry: vi.fn(), light: vi.fn() };
    const found = foundNeeds(analysisOf(asking, usHost).needs, bench);
    expect(found.map(({ label }) => label)).toEqual(['!', '?', 'Tab']);
    expect(found[1]?.hint).toContain('missing');
    found[0]?.onChoose();
    expect(bench.light.mock.lastCall?.[0]).toMatchObject({ keys: ['B', 'A'] });
    found[1]?.onChoose();
    expect(bench.light).toHaveBeenLastCalledWith(null);
    expect(bench.carry).toHaveBeenLastCalledWith({
      carry: 'action',
      action: { do: 'char', char: '?' },
      label: '?',
    });
  });

  test('keys, by what they are called and by what they do', () => {
    const open = vi.fn();
    const found = foundKeys(sample, usHost, sample.layers[0]?.id ?? '', open);
    expect(found).toHaveLength(sample.board.keys.length);
    expect(found[0]?.hint).toBe(`key, ${found[0]?.also}`);
    found[1]?.onChoose();
    expect(open.mock.calls).toEqual([[sample.board.keys[1]?.id]]);
  });

  test('findings: one that is chosen lights up what it is about, on its layer', () => {
    const bench = { light: vi.fn(), showLayer: vi.fn() };
    const { findings } = analysisOf(asking, usHost);
    const found = foundFindings(findings, asking, bench);
    expect(found.map(({ label }) => label)).toEqual(findings.map(({ message }) => message));
    found[0]?.onChoose();
    expect(bench.light.mock.lastCall?.[0]).toMatchObject({ why: findings[0]?.message });
  });
});
