import type { Finding } from './find.ts';

/** What tells two findings about the same parts from one another. */
const TELLING = ['need', 'side', 'pair'] as const;

/** Findings about a whole layer: which keys and chords lie on it may change, the layer stays at fault. */
const ABOUT_A_LAYER: ReadonlySet<string> = new Set([
  'never-entered',
  'on-layer-never-entered',
  'lock',
  'latch',
]);

/**
 * What makes a finding the same before and after an edit: its rule, the key and layer at fault, the chord with the one
 * it is held against, and the need it is about. How it is at fault, numbers, wording and further parts may change.
 */
export function findingId({ rule, messageId, subjects, data }: Finding): string {
  const { keys, layers, chords } = subjects;
  if (ABOUT_A_LAYER.has(messageId)) return `${rule}/${layers[0] ?? ''}`;
  const about = [keys[0], layers[0], chords[0], chords[1], ...TELLING.map((name) => data[name])];
  return [rule, ...about.map((part) => part ?? '')].join('/');
}
