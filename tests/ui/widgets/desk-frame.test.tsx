import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { DeskFrame } from '../../../src/ui/widgets/desk-frame.tsx';

afterEach(cleanup);

/** Draws a desk in a window of that width, px. */
function desk(width: number) {
  Reflect.get(window, 'happyDOM').setViewport({ width, height: 800 });
  render(
    <DeskFrame
      left={<p>the needs</p>}
      main={<p>the board</p>}
      right={<p>the findings</p>}
      leftLabel="Needs"
      rightLabel="Findings"
      rightBadge="3"
    />,
  );
  const handle = (name: string) =>
    within(screen.getByRole('region', { name })).getByRole('button', { name: new RegExp(name) });
  const open = () => ['Needs', 'Findings'].map((name) => handle(name).getAttribute('aria-expanded'));
  return { handle, open };
}

describe("a desk's frame", () => {
  test('is open on both sides where there is room', () => {
    expect(desk(1440).open()).toEqual(['true', 'true']);
  });

  test('has drawers where there is less room, of which one is open at a time', async () => {
    const { handle, open } = desk(1024);
    expect(open()).toEqual(['false', 'false']);
    await userEvent.click(handle('Needs'));
    expect(open()).toEqual(['true', 'false']);
    await userEvent.click(handle('Findings'));
    expect(open()).toEqual(['false', 'true']);
    await userEvent.click(handle('Findings'));
    expect(open()).toEqual(['false', 'false']);
  });

  test('a closed side still shows its badge', () => {
    expect(desk(1024).handle('Findings')).toHaveTextContent('3');
  });

  test('is read board first on a narrow page, where both sections may be open', async () => {
    const { handle, open } = desk(390);
    const texts = screen.getAllByText(/^the /).map((element) => element.textContent);
    expect(texts).toEqual(['the board', 'the needs', 'the findings']);
    expect(open()).toEqual(['true', 'false']);
    await userEvent.click(handle('Findings'));
    expect(open()).toEqual(['true', 'true']);
  });

  test('is read from left to right on a wide one', () => {
    desk(1440);
    const texts = screen.getAllByText(/^the /).map((element) => element.textContent);
    expect(texts).toEqual(['the needs', 'the board', 'the findings']);
  });
});
