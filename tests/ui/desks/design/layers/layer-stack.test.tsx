import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { LayerStack } from '../../../../../src/ui/desks/design/layers/layer-stack.tsx';
import { openBench } from '../../../board/open-bench.ts';
import { design } from '../../../board/sample.ts';

afterEach(cleanup);

test('a sheet shows the open notes of its layer, and whoever hears it hears them too', () => {
  const note = { writtenAt: '2026-05-04T18:30:00Z', state: 'x', tickedOff: false };
  openBench({
    ...design(),
    diary: [
      { ...note, id: 'n1', text: 'The thumb reaches too far', layer: 'symbols' },
      { ...note, id: 'n2', text: 'Settled', layer: 'symbols', tickedOff: true },
      { ...note, id: 'n3', text: 'Of a key', keys: ['L21'] },
    ],
  });
  const { container } = render(<LayerStack />);
  const shown = [...container.querySelectorAll('[data-note]')];
  expect(shown.map((each) => [each.getAttribute('data-note'), each.closest('li')?.dataset.layer])).toEqual([
    ['n1', 'symbols'],
  ]);
  expect(screen.getByRole('button', { name: /too far/, pressed: false })).toBeInTheDocument();
});
