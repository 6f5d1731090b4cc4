import type { Finding } from './find.ts';

/** What tells two findings about the same parts from one another. */
const TELLING = ['need', 'side', 'pair', 'note'] as const;

/** Messages about a whole layer: which keys and chords lie on it may change, the layer stays at fault. */
const ABOUT_A_LAYER: ReadonlySet<string> = new Set([
  'never-entered',
  'on-layer-never-entered',
  'lock',
  'latch',
]);

/** Rules that have one thing to say about a chord at most: which keys, layers or other chords are to blame may change. */
const ABOUT_A_CHORD: ReadonlySet<string> = new Set([
  'chord-fires-while-typing',
  'chord-never-fires',
  'chord-uses-hold-tap',
  'chord-window-outside-hands',
  'chord-window-under-your-spread',
  'chords-with-same-keys',
]);

/**
 * What makes a finding the same before and after an edit: its rule and the parts that stay at fault, such as the key and
 * layer of a place, a chord with the one it lies in, or a need. How it is at fault, numbers, wording and further parts
 * may change.
 */
export function findingId({ rule, messageId, subjects, data }: Finding): string {
  const { keys, layers, chords } = subjects;
  if (ABOUT_A_LAYER.has(messageId)) return `${rule}/${layers[0] ?? ''}`;
  if (ABOUT_A_CHORD.has(rule)) return `${rule}/${chords[0] ?? ''}`;
  const about = [keys[0], layers[0], chords[0], chords[1], ...TELLING.map((name) => data[name])];
  return [rule, ...about.map((part) => part ?? '')].join('/');
}
