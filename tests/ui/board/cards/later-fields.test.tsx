import { act, cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { bindingAt } from '../../../../src/core/keymap/lookup.ts';
import { useBench } from '../../../../src/store/bench.ts';
import { BoardCard } from '../../../../src/ui/board/cards/board-card.tsx';
import { openBench } from '../open-bench.ts';
import { design, TAB_CHORD } from '../sample.ts';

const bench = () => useBench.getState();

afterEach(cleanup);

beforeEach(() => {
  openBench(design(undefined, [TAB_CHORD]));
  render(<BoardCard svg={{ current: null }} focusRequest={0} />);
});

describe('the later fields on a key’s card', () => {
  const bound = () => bindingAt(bench().keymap, { layer: 'base', key: 'R22' });
  beforeEach(async () => {
    act(() => bench().openCardOf({ card: 'key', key: 'R22' }));
    await userEvent.click(screen.getByRole('button', { name: /^Base, tap/ }));
    await userEvent.click(screen.getByText('With Shift', { selector: 'summary *' }));
  });

  test('binds what comes under Shift, says it on the row, and takes it away', async () => {
    const { tap } = bound() ?? {};
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'With Shift' }), 'a character');
    const [, under] = screen.getAllByRole('textbox', { name: 'Character' });
    await userEvent.type(under ?? document.body, ';{Enter}');
    expect(bound()).toMatchObject({ tap, onShift: { do: 'char', char: ';' } });
    expect(screen.getByRole('button', { name: /under Shift ;/ })).toBeInTheDocument();
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'With Shift' }),
      'the same, with Shift',
    );
    expect(bound()?.onShift).toBeUndefined();
  });

  test('offers there only what types, and a blank', () => {
    const options = within(screen.getByRole('combobox', { name: 'With Shift' })).getAllByRole('option');
    expect(options.map((option) => option.textContent)).toEqual([
      'the same, with Shift',
      'a character',
      'a key',
      'a text',
      'nothing, on purpose',
    ]);
  });

  test('repeat and Shift for one word are chosen like any kind', async () => {
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Does' }), 'the last output again');
    expect(bound()?.tap).toEqual({ do: 'repeat' });
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Does' }), 'Shift for one word');
    expect(bound()?.tap).toEqual({ do: 'word-shift' });
  });
});

describe('the later fields on a chord’s card', () => {
  const chord = () => bench().keymap.chords?.[0];
  beforeEach(async () => {
    act(() => bench().openCardOf({ card: 'chord', chord: TAB_CHORD.id }));
    await userEvent.click(screen.getByText('When its keys stay down'));
  });

  test('lets it end with its last key, and again with its first', async () => {
    const ends = screen.getByRole('combobox', { name: 'It ends when' });
    await userEvent.selectOptions(ends, 'the last of its keys comes up');
    expect(chord()?.release).toBe('last-up');
    await userEvent.selectOptions(ends, 'the first of its keys comes up');
    expect(chord()).toEqual(TAB_CHORD);
  });

  test('gives it a hold with a timing of its own, and takes it away', async () => {
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'When held' }), 'a layer');
    expect(chord()?.hold).toEqual({ do: 'layer', layer: 'symbols', mode: 'while-held' });
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Hold by' }), 'a tap inside');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Tap if held alone' }), 'yes');
    expect(chord()).toMatchObject({ holdBy: 'tap-inside', tapIfAlone: true });
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'When held' }), 'no hold');
    expect(chord()?.hold).toBeUndefined();
  });
});
