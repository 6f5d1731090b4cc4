import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { type MeasuredFile, writeMeasured } from '../../../../../src/core/typist/measured-file.ts';
import { measured } from '../../../../../src/store/typist.ts';
import { OpenFigures } from '../../../../../src/ui/desks/design/measure/open-figures.tsx';

const figures: MeasuredFile = {
  format: 'measured-typist',
  version: 1,
  measuredAt: 12,
  clockStepMs: 5,
  intervals: [],
  dwells: [{ finger: 1, ms: 90 }],
  chords: [],
};

const kept = () => measured.getState().typist?.file.dwells.length ?? 0;

async function choose(text: string) {
  const file = new File([text], 'figures.json', { type: 'application/json' });
  await userEvent.upload(screen.getByLabelText(/^Open a file/), file);
}

afterEach(async () => {
  cleanup();
  await measured.getState().forget();
});

test('without figures a file is taken at once', async () => {
  const opened = vi.fn();
  render(<OpenFigures known={false} onOpened={opened} />);
  await choose(writeMeasured(figures));
  await vi.waitFor(() => expect(opened).toHaveBeenCalledOnce());
  expect(kept()).toBe(1);
});

test('beside figures it is asked what becomes of them; a file that is none changes nothing', async () => {
  await measured.getState().open(figures, 'replace');
  const opened = vi.fn();
  render(<OpenFigures known onOpened={opened} />);
  await choose('{}');
  expect(await screen.findByRole('alert')).toBeInTheDocument();
  await choose(writeMeasured(figures));
  await screen.findByRole('region');
  expect(screen.queryByRole('alert')).toBeNull();
  expect(kept()).toBe(1);
  await userEvent.click(screen.getByRole('button', { name: 'Leave them as they are' }));
  expect([kept(), screen.queryByRole('region')]).toEqual([1, null]);
  await choose(writeMeasured(figures));
  await userEvent.click(await screen.findByRole('button', { name: 'Add it to them' }));
  expect(kept()).toBe(2);
  expect(opened).toHaveBeenCalledOnce();
});
