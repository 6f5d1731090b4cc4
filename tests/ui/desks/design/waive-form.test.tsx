import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { useBench } from '../../../../src/store/bench.ts';
import { WaiveForm } from '../../../../src/ui/desks/design/needs/waive-form.tsx';
import { sample } from '../../../store/sample.ts';

const waived = () => useBench.getState().keymap.needs?.waived;

test('a need is let off only with a reason, in one step that can be undone; Escape lets it stand', async () => {
  useBench.getState().open('test', { ...sample, needs: { lists: [], own: ['ü'], waived: [] } });
  const user = userEvent.setup();
  render(<WaiveForm need="ü" name="ü" />);
  await user.click(screen.getByRole('button', { name: 'Let off…' }));
  expect(screen.getByRole('button', { name: 'Let off' })).toBeDisabled();
  await user.type(screen.getByRole('textbox', { name: 'Why ü need not be typed' }), '{Escape}');
  expect(waived()).toEqual([]);

  await user.click(screen.getByRole('button', { name: 'Let off…' }));
  await user.type(screen.getByRole('textbox'), ' no use {Enter}');
  expect(waived()).toEqual([{ need: 'ü', why: 'no use' }]);
  useBench.getState().undo();
  expect(waived()).toEqual([]);
});
