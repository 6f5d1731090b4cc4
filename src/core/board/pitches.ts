import type { MadeFrom } from '../keymap/types.ts';

/** A distance from key to key that boards are built with. */
export interface Pitch {
  readonly id: string;
  readonly title: string;
  readonly xMm: number;
  readonly yMm: number;
  /** Where the figure comes from. */
  readonly source: string;
}

/** The pitches that are offered. The first lies within the 19 ± 1 mm of ISO 9241-4. */
export const PITCHES: readonly Pitch[] = [
  {
    id: 'full',
    title: '19.05 × 19.05 mm, full size',
    xMm: 19.05,
    yMm: 19.05,
    source: 'ISO 9241-4: 19 ± 1 mm',
  },
  {
    id: 'low-profile',
    title: '18 × 17 mm, low-profile',
    xMm: 18,
    yMm: 17,
    source: 'low-profile, common practice, no source',
  },
];

/**
 * The same board with keys at another pitch. The thumb arc shrinks or grows with the keys; stagger, splay and the
 * gap of the halves stay, since they follow the hand and not the key.
 */
export function atPitch(madeFrom: MadeFrom, pitch: Pick<Pitch, 'xMm' | 'yMm'>): MadeFrom {
  const across = pitch.xMm / madeFrom.pitchXMm;
  const down = pitch.yMm / madeFrom.pitchYMm;
  const scaled = (thumb: MadeFrom['thumb']): MadeFrom['thumb'] => ({
    ...thumb,
    radiusMm: within(thumb.radiusMm * across, 20, 300),
    inwardsMm: within(thumb.inwardsMm * across, -150, 150),
    downMm: within(thumb.downMm * down, -150, 150),
  });
  const { left } = madeFrom;
  return {
    ...madeFrom,
    pitchXMm: pitch.xMm,
    pitchYMm: pitch.yMm,
    thumb: scaled(madeFrom.thumb),
    ...(left === undefined ? {} : { left: { ...left, thumb: scaled(left.thumb) } }),
  };
}

/** The document's limits hold for what was scaled as well. */
function within(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
