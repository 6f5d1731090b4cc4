import { act, cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../src/store/bench.ts';
import { Board } from '../../../src/ui/board/board.tsx';
import { boundAt, openBench } from './open-bench.ts';
import { design, TAB_CHORD } from './sample.ts';

const key = (name: string | RegExp) => screen.getByRole('option', { name });
const bench = () => useBench.getState();
const CURLY = { carry: 'action', action: { do: 'char', char: '{' }, label: '{' } as const;

afterEach(cleanup);

beforeEach(() => {
  openBench(design(undefined, [TAB_CHORD]));
  render(<Board />);
});

describe('the board by keyboard', () => {
  test('is one tab stop, at the left index finger’s home key', async () => {
    await userEvent.tab();
    expect(key(/^left index home/)).toHaveFocus();
    const stops = screen.getAllByRole('option').filter((each) => each.getAttribute('tabindex') === '0');
    expect(stops).toHaveLength(1);
  });

  test('arrows walk it by geometry, and the tab stop goes along', async () => {
    await userEvent.tab();
    await userEvent.keyboard('{ArrowRight}{ArrowUp}');
    expect(key(/^left inner index top/)).toHaveFocus();
    expect(key(/^left inner index top/)).toHaveAttribute('tabindex', '0');
    expect(bench().focusedKey).toBe('L11');
  });

  test('a printing character binds itself, and is said', async () => {
    key(/^left index home/).focus();
    await userEvent.keyboard('ç');
    expect(boundAt('base', 'L22')).toEqual({ tap: { do: 'char', char: 'ç' } });
    expect(key('left index home, Base: ç')).toHaveFocus();
    expect(screen.getByText('ç on left index home')).toBeInTheDocument();
    expect(bench().past).toHaveLength(1);
  });

  test('binds on the layer in front', async () => {
    act(() => bench().showLayer('symbols'));
    key(/^right middle home/).focus();
    await userEvent.keyboard('%');
    expect(boundAt('symbols', 'R23')).toEqual({ tap: { do: 'char', char: '%' } });
    expect(boundAt('base', 'R23')).toEqual({ tap: { do: 'char', char: 'k' } });
  });

  test('Delete unbinds; where nothing is bound it makes no step', async () => {
    key(/^right index home/).focus();
    await userEvent.keyboard('{Delete}{Delete}');
    expect(boundAt('base', 'R22')).toBeUndefined();
    expect(bench().past).toHaveLength(1);
  });

  test('Space selects and lets go', async () => {
    key(/^right index home/).focus();
    await userEvent.keyboard(' {ArrowRight} ');
    expect(bench().selectedKeys).toEqual(['R22', 'R23']);
    expect(key(/^right index home/)).toHaveAttribute('aria-selected', 'true');
    await userEvent.keyboard(' ');
    expect(bench().selectedKeys).toEqual(['R22']);
  });

  test('what is carried goes on the tap by Enter, on the hold with Shift', async () => {
    act(() => bench().carry(CURLY));
    key(/^left ring home/).focus();
    await userEvent.keyboard('{Shift>}{Enter}{/Shift}');
    expect(boundAt('base', 'L24')).toEqual({ hold: CURLY.action });
    expect(bench().carried).toBeNull();
    act(() => bench().carry(CURLY));
    await userEvent.keyboard('{Enter}');
    expect(boundAt('base', 'L24')).toEqual({ tap: CURLY.action, hold: CURLY.action });
  });

  test('Escape lets go of one thing at a time', async () => {
    key(/^right index home/).focus();
    act(() => {
      bench().carry(CURLY);
      bench().selectKeys(['R22'], 'only');
    });
    await userEvent.keyboard('{Escape}');
    expect([bench().carried, bench().selectedKeys]).toEqual([null, ['R22']]);
    await userEvent.keyboard('{Escape}');
    expect(bench().selectedKeys).toEqual([]);
  });

  test('Enter opens the card and puts the focus into it; Escape gives it back', async () => {
    key(/^right index home/).focus();
    await userEvent.keyboard('{Enter}');
    const card = screen.getByRole('dialog', { name: 'Right index home' });
    expect(within(card).getByRole('button', { name: 'Base, tap: j' })).toHaveFocus();
    await userEvent.keyboard('{Escape}');
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(key(/^right index home/)).toHaveFocus();
  });

  test('Control and Z stays the page’s', async () => {
    key(/^right index home/).focus();
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(bench().past).toEqual([]);
  });
});

describe('the board by pointer', () => {
  test('a click opens the card and leaves the focus on the key, where typing binds', async () => {
    await userEvent.click(key(/^right middle home/));
    expect(bench().openCard).toBeNull();
    const tapHalf = key(/^right middle home/).querySelector('[data-side="tap"] rect');
    if (tapHalf === null) throw new Error('the key has no tap half');
    await userEvent.click(tapHalf);
    expect(bench().openCard).toEqual({ card: 'key', key: 'R23' });
    expect(screen.getByRole('dialog')).not.toContainElement(document.activeElement as HTMLElement);
  });

  test('click, then click: what is carried goes on the half that was met', async () => {
    act(() => bench().carry(CURLY));
    expect(screen.getByText(/press a key to put it down/)).toBeInTheDocument();
    const holdHalf = key(/^left ring home/).querySelector('[data-side="hold"] rect');
    if (holdHalf === null) throw new Error('the key has no hold half');
    await userEvent.click(holdHalf);
    expect(boundAt('base', 'L24')).toEqual({ hold: CURLY.action });
  });

  test('a chord’s tag opens its card', async () => {
    await userEvent.click(screen.getByRole('button', { name: 'chord Tab, 45 ms' }));
    expect(bench().openCard).toEqual({ card: 'chord', chord: 'c1' });
  });
});

describe('chords from the selection', () => {
  test('Make chord opens a card for the selected keys', async () => {
    act(() => bench().selectKeys(['L22', 'L23', 'L24'], 'only'));
    await userEvent.click(screen.getByRole('button', { name: 'Make chord' }));
    expect(bench().openCard).toMatchObject({ card: 'new-chord', draft: { keys: ['L22', 'L23', 'L24'] } });
  });

  test('one key is not enough', () => {
    act(() => bench().selectKeys(['L22'], 'only'));
    expect(screen.getByRole('button', { name: 'Make chord' })).toBeDisabled();
  });
});

describe('what is lit', () => {
  test('shows the order of a route on its keys', () => {
    const order = [
      { key: 'LT1', held: true },
      { key: 'R22', held: false },
    ];
    act(() => bench().light({ why: '(', keys: ['LT1', 'R22'], chords: ['c1'], layers: [], order }));
    const lit = [...document.querySelectorAll('[data-drawing][data-lit="true"]')];
    expect(lit.map((drawing) => drawing.getAttribute('data-drawing'))).toEqual(['R22', 'LT1'].sort());
    expect(screen.getByText('2')).toBeInTheDocument();
    expect(document.querySelector('[data-outline="c1"]')).toHaveAttribute('data-lit', 'true');
  });
});
