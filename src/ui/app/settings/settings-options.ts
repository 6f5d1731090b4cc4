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

/** Whether the page opens without a network, in a sentence. */
export function networkSentence(state: 'asking' | 'kept' | 'not kept'): string {
  if (state === 'kept')
    return 'This page is kept in the browser: it opens and works without a network, and can be installed.';
  if (state === 'asking')
    return 'The browser is still putting this page by, so that it works without a network.';
  return 'This browser does not keep the page, so opening it needs a network; once it is open, nothing does.';
}
