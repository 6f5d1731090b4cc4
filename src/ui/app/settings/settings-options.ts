/** The choices of the settings, as they are offered. */
export const THEMES = [
  { value: 'system', label: 'As the computer is' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
] as const;

export const MOTIONS = [
  { value: 'system', label: 'As the computer is' },
  { value: 'less', label: 'Nothing moves' },
] as const;

export const UNITS = [
  { value: 'mm', label: 'Millimetres' },
  { value: 'inch', label: 'Inches' },
] as const;

export const LEGENDS = [
  { value: 'characters', label: 'Characters typed' },
  { value: 'codes', label: 'Names of the keys' },
] as const;
