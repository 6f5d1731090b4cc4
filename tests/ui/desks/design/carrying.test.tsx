import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../../src/store/bench.ts';
import { DesignDesk } from '../../../../src/ui/desks/design/design-desk.tsx';
import { openBench } from '../../board/open-bench.ts';
import { design } from '../../board/sample.ts';

afterEach(cleanup);

beforeEach(() => {
  openBench({ ...design(), needs: { lists: [], own: ['é', 'ß'], waived: [] } });
  render(<DesignDesk />);
});

const chip = () => screen.getByRole('button', { name: /^é/ });
const carried = () => useBench.getState().carried?.label;

describe('a need in the hand', () => {
  test('picked up by keyboard it goes on from the board', async () => {
    chip().focus();
    await userEvent.keyboard('{Enter}');
    expect(carried()).toBe('é');
    expect(document.activeElement).toHaveAttribute('data-key');
  });

  test('picked up by a click it leaves the focus where it is, and Escape drops it there', async () => {
    await userEvent.click(chip());
    expect(carried()).toBe('é');
    expect(chip()).toHaveFocus();
    await userEvent.keyboard('{Escape}');
    expect(carried()).toBeUndefined();
  });
});
