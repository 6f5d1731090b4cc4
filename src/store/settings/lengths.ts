import type { Settings } from './settings.ts';

/** Millimetres to the inch, exactly (international yard and pound agreement of 1959; ISO 80000-3). */
const MM_OF_INCH = 25.4;

/** A length or an angle as a person reads and types it, with what a field for it needs. Kept lengths are mm always. */
export interface ShownLength {
  readonly unit: 'mm' | 'in' | '°';
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** What is kept of a number that was typed or set, lengths in mm: to the micrometre. */
  readonly mmOf: (shown: number) => number;
}

/** A length with its limits, mm, in the units that are settled; an angle as it is. An inch has a thousand steps at least. */
export function shownLength(
  mm: {
    readonly value: number;
    readonly min: number;
    readonly max: number;
    readonly step: number;
    readonly unit?: 'mm' | '°';
  },
  units: Settings['units'],
): ShownLength {
  const { unit = 'mm' } = mm;
  if (units === 'mm' || unit === '°') return { ...mm, unit, mmOf: (shown) => shown };
  const inches = (length: number) => thousandths(length / MM_OF_INCH);
  return {
    unit: 'in',
    value: inches(mm.value),
    min: inches(mm.min),
    max: inches(mm.max),
    step: Math.max(0.001, inches(mm.step)),
    mmOf: (shown) => thousandths(Math.min(mm.max, Math.max(mm.min, shown * MM_OF_INCH))),
  };
}

/** A length in words, to about a tenth of a millimetre: "12.5 mm", "0.492 in". */
export function lengthText(mm: number, units: Settings['units']): string {
  if (units === 'mm') return `${Math.round(mm * 100) / 100 + 0} mm`;
  return `${thousandths(mm / MM_OF_INCH)} in`;
}

function thousandths(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}
