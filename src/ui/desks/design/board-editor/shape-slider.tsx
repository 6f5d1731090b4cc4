import type { MadeFrom } from '../../../../core/keymap/types.ts';
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
  return (
    <Slider
      label={label}
      unit={unit}
      value={value}
      min={min}
      max={max}
      step={step}
      onPreview={(next) => shaping.preview(next === null ? null : made(next))}
      onCommit={(next) => shaping.commit(`Change ${label.toLowerCase()}`, made(next))}
    />
  );
}
