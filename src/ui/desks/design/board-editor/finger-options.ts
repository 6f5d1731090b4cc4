import type { Finger } from '../../../../core/keymap/types.ts';

/** The fingers as choices, numbered as their keys are: 1 is the thumb. */
export const FINGER_OPTIONS: readonly { readonly value: Finger; readonly label: string }[] = [
  { value: 'thumb', label: 'Thumb' },
  { value: 'index', label: 'Index finger' },
  { value: 'middle', label: 'Middle finger' },
  { value: 'ring', label: 'Ring finger' },
  { value: 'little', label: 'Little finger' },
];
