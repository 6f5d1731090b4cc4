import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../../src/store/bench.ts';
import { BoardCard } from '../../../../src/ui/board/cards/board-card.tsx';
import { newChordDraft } from '../../../../src/ui/board/new-chord.ts';
import { openBench } from '../open-bench.ts';
import { design, TAB_CHORD } from '../sample.ts';

const bench = () => useBench.getState();
const chords = () => bench().keymap.chords;

afterEach(cleanup);

beforeEach(() => {
  openBench(design(undefined, [TAB_CHORD]));
  render(<BoardCard svg={{ current: null }} focusRequest={0} />);
});

describe('the card of a new chord', () => {
  beforeEach(() =>
    act(() => bench().openCardOf({ card: 'new-chord', draft: newChordDraft(['L22', 'L23', 'L24'], 'base') })),
  );

  test('makes it only when its button is pressed, with what was set before', async () => {
    expect(screen.getByRole('button', { name: 'Make chord' })).toBeDisabled();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Does' }), 'a character');
    await userEvent.type(screen.getByRole('textbox', { name: 'Character' }), '%{Enter}');
    const window = screen.getByRole('spinbutton', { name: 'Window, number' });
    await userEvent.clear(window);
    await userEvent.type(window, '45{Enter}');
    expect(chords()).toHaveLength(1);
    await userEvent.click(screen.getByRole('button', { name: 'Make chord' }));
    expect(chords()?.[1]).toEqual({
      id: 'c2',
      keys: ['L22', 'L23', 'L24'],
      windowMs: 45,
      layers: ['base'],
      action: { do: 'char', char: '%' },
    });
    expect(bench().past).toHaveLength(1);
    expect(bench().openCard).toEqual({ card: 'chord', chord: 'c2' });
  });

  test('keeps the fields that a change leaves out, and drops those set to nothing', async () => {
    await userEvent.click(screen.getByRole('checkbox', { name: /every layer/ }));
    await userEvent.type(screen.getByRole('textbox', { name: 'Name' }), 'Percent{Enter}');
    expect(bench().openCard).toEqual({
      card: 'new-chord',
      draft: { keys: ['L22', 'L23', 'L24'], windowMs: 50, name: 'Percent', action: { do: 'nothing' } },
    });
  });

  test('cancelled, it leaves no trace', async () => {
    await userEvent.click(screen.getByRole('button', { name: 'Cancel' }));
    expect([bench().openCard, chords()?.length, bench().past]).toEqual([null, 1, []]);
  });
});

describe('the card of a chord', () => {
  beforeEach(() => act(() => bench().openCardOf({ card: 'chord', chord: 'c1' })));

  test('the slider previews and sets the window once', () => {
    const slider = screen.getByRole('slider', { name: 'Window' });
    for (const value of ['60', '75', '90']) fireEvent.change(slider, { target: { value } });
    expect(chords()?.[0]?.windowMs).toBe(45);
    fireEvent.pointerUp(slider);
    expect(chords()?.[0]?.windowMs).toBe(90);
    expect(bench().past).toHaveLength(1);
  });

  test('Escape takes back what a slider or a number field was moved to, and only then closes', () => {
    const slider = screen.getByRole('slider', { name: 'Window' });
    const number = screen.getByRole('spinbutton', { name: 'Window, number' });
    fireEvent.change(slider, { target: { value: '90' } });
    fireEvent.keyDown(slider, { key: 'Escape' });
    fireEvent.change(number, { target: { value: '33' } });
    fireEvent.keyDown(number, { key: 'Escape' });
    expect(bench().openCard).not.toBeNull();
    expect(slider).toHaveValue('45');
    fireEvent.keyDown(slider, { key: 'Escape' });
    expect([bench().openCard, chords()?.[0]?.windowMs, bench().past]).toEqual([null, 45, []]);
  });

  test('lives on chosen layers, one at least, or on every one', async () => {
    await userEvent.click(screen.getByRole('checkbox', { name: /every layer/ }));
    expect(chords()?.[0]?.layers).toEqual(['base', 'symbols']);
    await userEvent.click(screen.getByRole('checkbox', { name: 'Symbols' }));
    expect(chords()?.[0]?.layers).toEqual(['base']);
    expect(screen.getByRole('checkbox', { name: 'Base' })).toBeDisabled();
    await userEvent.click(screen.getByRole('checkbox', { name: /every layer/ }));
    expect(chords()?.[0]).not.toHaveProperty('layers');
  });

  test('takes the selected keys in place of its own', async () => {
    act(() => bench().selectKeys(['R22', 'R23', 'R24'], 'only'));
    await userEvent.click(screen.getByRole('button', { name: 'Take the 3 selected keys' }));
    expect(chords()?.[0]?.keys).toEqual(['R22', 'R23', 'R24']);
    await userEvent.click(screen.getByRole('button', { name: 'Take right index home out of the chord' }));
    expect(chords()?.[0]?.keys).toEqual(['R23', 'R24']);
  });

  test('sets and takes away the quiet before', async () => {
    const field = screen.getByRole('spinbutton', { name: 'Quiet before' });
    await userEvent.clear(field);
    await userEvent.type(field, '120{Enter}');
    expect(chords()?.[0]?.quietBeforeMs).toBe(120);
    await userEvent.clear(field);
    await userEvent.type(field, '0{Enter}');
    expect(chords()?.[0]).not.toHaveProperty('quietBeforeMs');
  });

  test('deletes it', async () => {
    await userEvent.click(screen.getByRole('button', { name: 'Delete chord' }));
    expect([bench().openCard, chords()]).toEqual([null, []]);
  });
});
