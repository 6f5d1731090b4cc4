import type { MadeFrom } from '../../../../core/keymap/types.ts';
import { shownLength } from '../../../../store/settings/lengths.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Slider } from '../../../widgets/slider.tsx';
import type { Shaping } from './use-shaping.ts';

/** A parameter of the board. */
export interface ShapeParameter {
  readonly label: string;
  readonly unit: 'mm' | '°';
  readonly value: number;
  readonly limits: readonly [number, number];
  readonly step: number;
  /** The parameters with another value of this one. */
  readonly made: (value: number) => MadeFrom;
}

/** Parameters of the board as sliders with their exact numbers. */
export function ShapeSliders({
  parameters,
  shaping,
}: {
  readonly parameters: readonly ShapeParameter[];
  readonly shaping: Shaping;
}) {
  return parameters.map((each) => <ShapeSlider key={each.label} {...each} shaping={shaping} />);
}

function ShapeSlider({
  label,
  unit,
  value,
  limits: [min, max],
  step,
  shaping,
  made,
}: ShapeParameter & { readonly shaping: Shaping }) {
  const units = useSettings((settings) => settings.units);
  const { mmOf, ...shown } = shownLength({ value, min, max, step, unit }, units);
  return (
    <Slider
      label={label}
      {...shown}
      onPreview={(next) => shaping.preview(next === null ? null : made(mmOf(next)))}
      onCommit={(next) => shaping.commit(`Change ${label.toLowerCase()}`, made(mmOf(next)))}
    />
  );
}
