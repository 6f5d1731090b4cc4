import { useBench } from '../../store/bench.ts';
import { useSettings } from '../../store/settings/use-settings.ts';
import { CheckList } from '../widgets/check-list.tsx';
import { hiddenAfter, rungOptions } from './rung-options.ts';

/** Which layers have a rung in the ladders, on the board and on the sheet alike. */
export function RungChoice() {
  const layers = useBench((bench) => bench.keymap.layers);
  const { hiddenRungs, settle } = useSettings();
  const options = rungOptions(layers);
  if (options.length === 0) return null;
  const shown = options.filter(({ number }) => !hiddenRungs.includes(number)).map(({ value }) => value);
  const changed = (values: readonly string[]) =>
    settle({ hiddenRungs: hiddenAfter(options, values, hiddenRungs) });
  return <CheckList label="Rungs of the ladders" values={shown} options={options} onChange={changed} />;
}
