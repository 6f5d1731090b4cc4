import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { useBench } from '../../../../../src/store/bench.ts';
import { FillDialog } from '../../../../../src/ui/desks/design/fill/fill-dialog.tsx';
import { openBench } from '../../../board/open-bench.ts';
import { design, layer } from '../../../board/sample.ts';

afterEach(cleanup);

test.each([
  ['base', 'arrangement'],
  ['signs', 'lines'],
])('on the layer %s the way that is offered first is %s', (front, way) => {
  openBench(design([layer('base', 'Base', {}), layer('signs', 'Signs', {})]));
  useBench.getState().showLayer(front);
  render(<FillDialog onClose={() => {}} />);
  const chosen = screen.getAllByRole('radio', { hidden: true }).filter((radio) => radio.matches(':checked'));
  expect(chosen.map((radio) => radio.getAttribute('value'))).toEqual([way]);
});
