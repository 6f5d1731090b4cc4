const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** How long ago something was, in words; beyond a week the date. Both times in ms since 1970. */
export function timeText(then: number, now: number): string {
  const ago = now - then;
  if (ago < MINUTE) return 'just now';
  if (ago < HOUR) return counted(Math.floor(ago / MINUTE), 'minute');
  if (ago < DAY) return counted(Math.floor(ago / HOUR), 'hour');
  if (ago < 7 * DAY) return counted(Math.floor(ago / DAY), 'day');
  return `on ${new Date(then).toISOString().slice(0, 10)}`;
}

function counted(count: number, unit: string): string {
  return count === 1 ? `1 ${unit} ago` : `${count} ${unit}s ago`;
}
