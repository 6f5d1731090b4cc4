import type { Stream } from './stream.ts';

/** Writes a stream as JSON for people and for comparing: an event a line. Reading it gives an equal stream again. */
export function writeStream({ name, made, meant, events }: Stream): string {
  const lines = events.map(
    ({ t, key, type }) => `    { "t": ${t}, "key": ${JSON.stringify(key)}, "type": "${type}" }`,
  );
  const fields = [
    '"format": "key-stream"',
    '"version": 1',
    `"name": ${JSON.stringify(name)}`,
    `"made": ${JSON.stringify(made)}`,
    `"meant": ${JSON.stringify(meant)}`,
    `"events": [${lines.length === 0 ? '' : `\n${lines.join(',\n')}\n  `}]`,
  ];
  return `{\n  ${fields.join(',\n  ')}\n}\n`;
}
