import type { MadeFrom } from '../../../../core/keymap/types.ts';
import { shownLength } from '../../../../store/settings/lengths.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Slider } from '../../../widgets/slider.tsx';
import type { Shaping } from './use-shaping.ts';

/** A parameter of the board as a slider with its exact number. */
export function ShapeSlider({
  label,
  unit,
  value,
  limits: [min, max],
  step,
  shaping,
  made,
}: {
  readonly label: string;
  readonly unit: 'mm' | '°';
  readonly value: number;
  readonly limits: readonly [number, number];
  readonly step: number;
  readonly shaping: Shaping;
  /** The parameters with another value of this one. */
  readonly made: (value: number) => MadeFrom;
}) {
  const units = useSettings((settings) => settings.units);
  const { mmOf, ...shown } = shownLength({ value, min, max, step }, unit === 'mm' ? units : 'mm');
  return (
    <Slider
      label={label}
      {...shown}
      unit={unit === 'mm' ? shown.unit : unit}
      onPreview={(next) => shaping.preview(next === null ? null : made(mmOf(next)))}
      onCommit={(next) => shaping.commit(`Change ${label.toLowerCase()}`, made(mmOf(next)))}
    />
  );
}
