import type { Forecast, ReachedPoint } from '../../../core/practice/forecast.ts';
import type { SessionErrors } from './errors-plot.tsx';
import { count } from './practise-words.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

/** A time under an axis: the hour where all lies within a day, else the date. */
export function timeLabel(at: number, spanMs: number): string {
  const date = new Date(at);
  return spanMs < DAY_MS
    ? date.toLocaleTimeString('en', { hour: '2-digit', minute: '2-digit', hour12: false })
    : date.toLocaleDateString('en', { day: 'numeric', month: 'short' });
}

/** What the curve says, for reading out. */
export function curveLabel(title: string, points: readonly ReachedPoint[], forecast: Forecast): string {
  const last = points.at(-1);
  if (last === undefined) return `${title}: no times yet.`;
  const first = points[0] ?? last;
  const past = `${title}: from ${Math.round(first.ms)} to ${Math.round(last.ms)} ms over ${count(points.length, 'point', 'points')}.`;
  const ahead = forecast.state === 'band' ? forecast.days.at(-1) : undefined;
  if (ahead === undefined) return past;
  return `${past} In four weeks likely between ${Math.round(ahead.low)} and ${Math.round(ahead.high)} ms.`;
}

/** What is known of the weeks to come, in a sentence or two. */
export function forecastWords(forecast: Forecast): string {
  switch (forecast.state) {
    case 'too-few':
      return `What comes of it cannot be known yet: ${count(forecast.points, 'point', 'points')} so far, and a forecast takes at least ${forecast.needed} (McMulkin and Kroemer, 1992). A point is ten presses that were right.`;
    case 'no-practice':
      return 'No practice of these in the last two weeks: there is no pace to forecast by.';
    case 'band': {
      const last = forecast.days.at(-1);
      const bounds = `${Math.round(last?.low ?? 0)} and ${Math.round(last?.high ?? 0)} ms`;
      return `At the pace of the last two weeks (${Math.round(forecast.perDay)} presses a day) likely between ${bounds} in four weeks, by the power law of practice. It holds for ten presses at a time, and only if learning goes on as it did.`;
    }
  }
}

/** What the plot of errors says, for reading out. */
export function errorsLabel(title: string, sessions: readonly SessionErrors[]): string {
  const last = sessions.at(-1);
  if (last === undefined) return `${title}: no sessions yet.`;
  const share = Math.round((last.wrong / Math.max(1, last.tries)) * 100);
  return `${title}: wrong tries over ${count(sessions.length, 'session', 'sessions')}, ${share} % in the last.`;
}
