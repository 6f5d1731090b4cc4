import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../../src/store/bench.ts';
import { BoardCard } from '../../../../src/ui/board/cards/board-card.tsx';
import { boundAt, openBench } from '../open-bench.ts';
import { design, TAB_CHORD } from '../sample.ts';

const bench = () => useBench.getState();

async function editing(side: string): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name: new RegExp(`^${side}`) }));
}

afterEach(cleanup);

beforeEach(() => {
  openBench(design(undefined, [TAB_CHORD]));
  render(<BoardCard svg={{ current: null }} focusRequest={0} />);
  act(() => bench().openCardOf({ card: 'key', key: 'R22' }));
});

describe('the key’s card', () => {
  test('binds a character', async () => {
    await editing('Symbols, tap');
    const field = screen.getByRole('textbox', { name: 'Character' });
    await userEvent.clear(field);
    await userEvent.type(field, '[[{Enter}');
    expect(boundAt('symbols', 'R22')).toEqual({ tap: { do: 'char', char: '[' } });
  });

  test('does not take two characters for one', async () => {
    await editing('Base, tap');
    const field = screen.getByRole('textbox', { name: 'Character' });
    await userEvent.type(field, 'xy');
    expect(screen.getByText('One character, please.')).toBeInTheDocument();
    await userEvent.keyboard('{Enter}');
    expect(bench().past).toEqual([]);
  });

  test('binds a key that is searched by its name', async () => {
    await editing('Base, tap');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Does' }), 'a key');
    await userEvent.type(screen.getByRole('combobox', { name: 'Key' }), 'page{ArrowDown}{Enter}');
    expect(boundAt('base', 'R22')?.tap).toEqual({ do: 'key', code: 'PageDown' });
  });

  test('puts modifiers around a key, in the order that the timing rules name', async () => {
    await editing('Base, hold');
    await userEvent.click(screen.getByText('With modifiers'));
    await userEvent.click(screen.getByRole('checkbox', { name: 'Left Alt' }));
    await userEvent.click(screen.getByRole('checkbox', { name: 'Left Control' }));
    const hold = { do: 'key', code: 'ShiftLeft', with: ['ControlLeft', 'AltLeft'] };
    expect(boundAt('base', 'R22')?.hold).toEqual(hold);
  });

  test('records the next key, Escape included, and the card stays open', async () => {
    await editing('Base, hold');
    await userEvent.click(screen.getByRole('button', { name: 'Record next key' }));
    await userEvent.keyboard('{Escape}');
    expect(boundAt('base', 'R22')?.hold).toEqual({ do: 'key', code: 'Escape' });
    expect(bench().openCard).not.toBeNull();
    expect(screen.getByRole('button', { name: 'Record next key' })).toHaveFocus();
  });

  test('recording is given up by its own button', async () => {
    await editing('Base, hold');
    await userEvent.click(screen.getByRole('button', { name: 'Record next key' }));
    await userEvent.click(screen.getByRole('button', { name: 'Cancel' }));
    await userEvent.keyboard('q');
    expect(bench().past).toEqual([]);
  });

  test('makes a hold lead to a layer', async () => {
    await editing('Base, hold');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Does' }), 'a layer');
    expect(boundAt('base', 'R22')?.hold).toEqual({ do: 'layer', layer: 'symbols', mode: 'while-held' });
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Stays on' }),
      'until pressed again (lock)',
    );
    expect(boundAt('base', 'R22')?.hold).toEqual({ do: 'layer', layer: 'symbols', mode: 'lock' });
  });

  test('takes the hold away and leaves the tap', async () => {
    await editing('Base, hold');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Does' }), 'no hold');
    expect(boundAt('base', 'R22')).toEqual({ tap: { do: 'char', char: 'j' } });
  });

  test('sets the timing of a key with both, and gives it back to the design', async () => {
    await editing('Base, hold');
    await userEvent.click(screen.getByText('Timing of this key'));
    const field = screen.getByRole('spinbutton', { name: 'Hold after, number' });
    expect(field).toHaveValue('200');
    await userEvent.clear(field);
    await userEvent.type(field, '180{Enter}');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Hold by' }), 'a tap inside');
    expect(boundAt('base', 'R22')).toMatchObject({ holdAfterMs: 180, holdBy: 'tap-inside' });
    await userEvent.click(screen.getByRole('button', { name: 'as the design: 200' }));
    expect(boundAt('base', 'R22')).not.toHaveProperty('holdAfterMs');
  });

  test('a key without a hold has no timing', async () => {
    await editing('Symbols, tap');
    expect(screen.queryByText('Timing of this key')).toBeNull();
  });

  test('picks the binding up to be moved', async () => {
    await editing('Symbols, tap');
    await userEvent.click(screen.getByRole('button', { name: 'Move or swap' }));
    expect(bench().carried).toMatchObject({ carry: 'binding', from: { layer: 'symbols', key: 'R22' } });
    expect([bench().openCard, bench().frontLayer]).toEqual([null, 'symbols']);
  });

  test('clears a layer’s binding whole', async () => {
    await editing('Base, tap');
    await userEvent.click(screen.getByRole('button', { name: 'Clear' }));
    expect(boundAt('base', 'R22')).toBeUndefined();
  });

  test('leads to the chords that the key takes part in', async () => {
    await userEvent.click(screen.getByRole('button', { name: 'Tab, 45 ms' }));
    expect(bench().openCard).toEqual({ card: 'chord', chord: 'c1' });
  });

  test('a press elsewhere closes it and keeps what was being written', async () => {
    await editing('Base, tap');
    const field = screen.getByRole('textbox', { name: 'Character' });
    await userEvent.clear(field);
    await userEvent.type(field, 'q');
    await userEvent.pointer({ target: document.body, keys: '[MouseLeft]' });
    expect(bench().openCard).toBeNull();
    expect(boundAt('base', 'R22')?.tap).toEqual({ do: 'char', char: 'q' });
  });
});
