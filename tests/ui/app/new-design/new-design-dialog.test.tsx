import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { NewDesignDialog } from '../../../../src/ui/app/new-design/new-design-dialog.tsx';

test('typing at once puts a name in the place of the one that stands there', async () => {
  vi.stubGlobal('fetch', () => Promise.reject(new Error('no network')));
  render(<NewDesignDialog onClose={() => {}} />);
  const name = screen.getByLabelText('Name');
  expect(name).toHaveFocus();
  await userEvent.keyboard('Lamp room');
  expect(name).toHaveValue('Lamp room');
});
