/**
 * Which item of a menu a pressed key moves to, by its index, or null where the key does not move: arrows go
 * round, Home and End go to the ends, a letter goes to the next item that begins with it.
 */
export function itemAfterKey(key: string, labels: readonly string[], now: number): number | null {
  const count = labels.length;
  if (count === 0) return null;
  if (key === 'ArrowDown') return (now + 1) % count;
  if (key === 'ArrowUp') return now <= 0 ? count - 1 : now - 1;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  if (key.length !== 1 || key === ' ') return null;
  const letter = key.toLowerCase();
  const round = labels.map((_, step) => (now + 1 + step + count) % count);
  return round.find((index) => labels[index]?.toLowerCase().startsWith(letter)) ?? null;
}
