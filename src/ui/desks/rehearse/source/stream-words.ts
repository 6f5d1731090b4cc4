import type { Stream } from '../../../../core/rehearse/stream.ts';

/** How much there is in a stream, and how it came to be: "84 presses, 21 s, written at 60 words a minute". */
export function countsWords({ events, made }: Stream): string {
  const presses = events.filter(({ type }) => type === 'down').length;
  const seconds = (events.at(-1)?.t ?? 0) / 1000;
  const time = seconds < 10 ? `${seconds.toFixed(1)} s` : `${Math.round(seconds)} s`;
  return `${presses.toLocaleString('en')} ${presses === 1 ? 'press' : 'presses'}, ${time}, ${madeWords(made)}`;
}

function madeWords(made: Stream['made']): string {
  if (made.how === 'typed') return 'typed';
  const speed = `${made.wpm} words a minute`;
  return made.measured === true
    ? `written as measured (${speed}), take ${made.seed}`
    : `written at ${speed}, typist ${made.seed}`;
}

/** The name of a stream's file. */
export function fileNameOf({ name }: Stream): string {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return `${plain === '' ? 'stream' : plain}.presses.json`;
}
