import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { Dialog } from '../../../src/ui/widgets/dialog.tsx';
import { MenuButton } from '../../../src/ui/widgets/menu.tsx';
import { Toast } from '../../../src/ui/widgets/toast.tsx';

afterEach(cleanup);

afterEach(() => vi.useRealTimers());

describe('a dialog', () => {
  test('is open while it is there, has a name, and closes by its cross', async () => {
    const onClose = vi.fn();
    render(
      <Dialog title="Export" onClose={onClose}>
        <p>Inside</p>
      </Dialog>,
    );
    const dialog = screen.getByRole('dialog', { name: 'Export' });
    expect(dialog).toHaveAttribute('open');
    await userEvent.click(screen.getByText('Inside'));
    expect(onClose).not.toHaveBeenCalled();
    await userEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(onClose).toHaveBeenCalledOnce();
  });

  test('closes by a click beside it', async () => {
    const onClose = vi.fn();
    render(
      <Dialog title="Export" onClose={onClose}>
        <p>Inside</p>
      </Dialog>,
    );
    await userEvent.click(screen.getByRole('dialog'));
    expect(onClose).toHaveBeenCalledOnce();
  });
});

describe('a menu', () => {
  // happy-dom has no popovers; the browser tests see the real ones.
  HTMLElement.prototype.showPopover ??= () => {};

  function setup() {
    const chosen = vi.fn();
    render(
      <MenuButton
        label="Designs"
        items={[
          { label: 'New', onSelect: () => chosen('new') },
          { label: 'Closed today', disabled: true, onSelect: () => chosen('closed') },
          'line',
          { label: 'Reed', checked: true, onSelect: () => chosen('reed') },
          { label: 'Rush', checked: false, onSelect: () => chosen('rush') },
        ]}
      />,
    );
    return { chosen, button: screen.getByRole('button', { name: 'Designs' }) };
  }

  test('opens on its first item, walks by arrows over what can be chosen, and chooses by Enter', async () => {
    const { chosen, button } = setup();
    button.focus();
    await userEvent.keyboard('{Enter}');
    expect(button).toHaveAttribute('aria-expanded', 'true');
    expect(screen.getByRole('menuitem', { name: 'New' })).toHaveFocus();
    await userEvent.keyboard('{ArrowDown}');
    expect(screen.getByRole('menuitemradio', { name: 'Reed' })).toBeChecked();
    expect(screen.getByRole('menuitemradio', { name: 'Reed' })).toHaveFocus();
    await userEvent.keyboard('{ArrowDown}{Enter}');
    expect(chosen.mock.calls).toEqual([['rush']]);
    expect(screen.queryByRole('menu')).toBeNull();
  });

  test('Escape closes it and gives the focus back', async () => {
    const { chosen, button } = setup();
    await userEvent.click(button);
    await userEvent.keyboard('{Escape}');
    expect(screen.queryByRole('menu')).toBeNull();
    expect(button).toHaveFocus();
    expect(chosen).not.toHaveBeenCalled();
  });

  test('a press outside closes it', async () => {
    const { button } = setup();
    await userEvent.click(button);
    await userEvent.click(document.body);
    expect(screen.queryByRole('menu')).toBeNull();
  });
});

describe('a toast', () => {
  test('goes away by itself, but not while it is pointed at', () => {
    vi.useFakeTimers();
    const onDismiss = vi.fn();
    render(
      <Toast tone="done" onDismiss={onDismiss}>
        Done.
      </Toast>,
    );
    const toast = screen.getByText('Done.').parentElement;
    act(() => toast?.querySelector('button')?.focus());
    act(() => vi.advanceTimersByTime(60_000));
    expect(onDismiss).not.toHaveBeenCalled();
    act(() => toast?.querySelector('button')?.blur());
    act(() => vi.advanceTimersByTime(60_000));
    expect(onDismiss).toHaveBeenCalledOnce();
  });

  test('offers what can be done about it', async () => {
    const onPress = vi.fn();
    render(
      <Toast tone="done" action={{ label: 'Undo', onPress }} onDismiss={() => {}}>
        Deleted.
      </Toast>,
    );
    await userEvent.click(screen.getByRole('button', { name: 'Undo' }));
    expect(onPress).toHaveBeenCalledOnce();
  });
});
