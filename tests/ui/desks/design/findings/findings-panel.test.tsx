import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useBench } from '../../../../../src/store/bench.ts';
import { FindingsPanel } from '../../../../../src/ui/desks/design/findings/findings-panel.tsx';
import { openBench } from '../../../board/open-bench.ts';
import { char, design, layer } from '../../../board/sample.ts';

afterEach(cleanup);

const attic = layer('attic', 'Attic', { L21: char('ß'), L22: char('!') });

beforeEach(() => {
  openBench({
    ...design([layer('base', 'Base', { R22: char('j') }), attic]),
    needs: { lists: ['function-keys'], own: [], waived: [] },
  });
  render(<FindingsPanel />);
});

describe('the list of findings', () => {
  test('twelve function keys that are missing are three sentences and a fold', async () => {
    const fold = screen.getByText('and 9 more like these');
    const details = fold.closest('details');
    expect(details).not.toHaveAttribute('open');
    expect(details?.querySelectorAll('[data-rule=need-missing]')).toHaveLength(9);
    expect(document.querySelectorAll('[data-rule=need-missing]')).toHaveLength(12);
    await userEvent.click(fold);
    expect(details).toHaveAttribute('open');
  });

  test('showing a finding about a layer brings it to the front and lights what is bound on it', async () => {
    const card = screen.getByText(/Nobody can enter Attic/).closest('li');
    const show = card?.querySelector('button[aria-pressed]');
    if (!(show instanceof HTMLElement)) throw new Error('the finding has no button that shows it');
    await userEvent.click(show);
    expect(useBench.getState().frontLayer).toBe('attic');
    expect(useBench.getState().lit?.keys).toEqual(['L21', 'L22']);
    await userEvent.click(show);
    expect(useBench.getState().lit).toBeNull();
  });
});

test('all missing needs are given places as one step, which says what is left and can be undone', async () => {
  const missing = () => document.querySelectorAll('[data-rule=need-missing]').length;
  const all = screen.getByRole('button', { name: /12 missing needs/ });
  const before = useBench.getState().keymap;
  await userEvent.click(all);
  expect(missing()).toBe(0);
  const { notices, past, undo } = useBench.getState();
  expect(past).toHaveLength(1);
  expect(notices.at(-1)?.text).toContain('12');
  act(undo);
  expect(useBench.getState().keymap).toBe(before);
  expect(missing()).toBe(12);
});

describe('a mend taken by keyboard', () => {
  const takeFirst = async () => {
    const mend = document.querySelector<HTMLElement>('li[data-card] button:not([aria-pressed])');
    if (mend === null) throw new Error('no finding has a mend');
    mend.focus();
    await userEvent.keyboard('{Enter}');
    return mend;
  };

  test('leaves the focus on the finding that now stands there', async () => {
    const mend = await takeFirst();
    expect(mend.isConnected).toBe(false);
    expect(document.activeElement).toBe(document.querySelector('li[data-card]'));
  });

  test('is told in one notice with what is left, and can be undone there', async () => {
    const title = (await takeFirst()).textContent ?? '';
    const [notice, ...more] = useBench.getState().notices.filter(({ canUndo }) => canUndo);
    expect(more).toEqual([]);
    expect(notice?.text).toContain(title);
    expect(notice?.text).toContain(String(document.querySelectorAll('li[data-card]').length));
  });
});
