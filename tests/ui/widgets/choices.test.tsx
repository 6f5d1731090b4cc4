import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { CheckList } from '../../../src/ui/widgets/check-list.tsx';
import { Choice } from '../../../src/ui/widgets/choice.tsx';
import { Select } from '../../../src/ui/widgets/select.tsx';
import { Switch } from '../../../src/ui/widgets/switch.tsx';

afterEach(cleanup);

const options = [
  { value: 'latch', label: 'Latch' },
  { value: 'lock', label: 'Lock' },
  { value: 'held', label: 'While held' },
] as const;

test('a choice is a group of radio buttons with a name', async () => {
  const onChange = vi.fn();
  render(<Choice label="Mode" value="latch" options={options} onChange={onChange} />);
  expect(screen.getByRole('group', { name: 'Mode' })).toBeInTheDocument();
  expect(screen.getByRole('radio', { name: 'Latch' })).toBeChecked();
  await userEvent.click(screen.getByRole('radio', { name: 'Lock' }));
  expect(onChange.mock.calls).toEqual([['lock']]);
});

test('a list of checks hands out what is chosen in the order of the options', async () => {
  const onChange = vi.fn();
  render(<CheckList label="Modes" values={['lock']} options={options} onChange={onChange} />);
  await userEvent.click(screen.getByRole('checkbox', { name: 'Latch' }));
  await userEvent.click(screen.getByRole('checkbox', { name: 'Lock' }));
  expect(onChange.mock.calls).toEqual([[['latch', 'lock']], [[]]]);
});

test('a select groups its options', async () => {
  const onChange = vi.fn();
  const grouped = [
    { value: 'a', label: 'Ash', group: 'Trees' },
    { value: 'r', label: 'Reed', group: 'Grasses' },
    { value: 'b', label: 'Beech', group: 'Trees' },
  ];
  render(<Select label="Plant" value="a" options={grouped} onChange={onChange} />);
  expect(screen.getAllByRole('group')).toHaveLength(2);
  expect(screen.getAllByRole('option').map((option) => option.textContent)).toEqual(['Ash', 'Beech', 'Reed']);
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Plant' }), 'Reed');
  expect(onChange.mock.calls).toEqual([['r']]);
});

test('a switch says whether it is on, and is thrown by click and key', async () => {
  const onChange = vi.fn();
  render(<Switch label="Same hand taps" on={false} onChange={onChange} />);
  const control = screen.getByRole('switch', { name: 'Same hand taps' });
  expect(control).not.toBeChecked();
  await userEvent.click(control);
  control.focus();
  await userEvent.keyboard(' ');
  expect(onChange.mock.calls).toEqual([[true], [true]]);
});
