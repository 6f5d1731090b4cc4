import type { Session } from '../../core/practice/session.ts';

/**
 * The practice of a design as a JSON text: every session with each try, its time in ms and what it went wrong by. Times of day
 * are ms since 1970.
 */
export function exportPractice(designName: string, sessions: readonly Session[]): string {
  return `${JSON.stringify({ format: 'practice-log', version: 1, design: designName, sessions }, null, 1)}\n`;
}
