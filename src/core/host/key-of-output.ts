import type { HostOutput } from './host-layout.ts';

/** The W3C `key` by which a browser tells of an output: the character, `Dead`; null for nothing, which browsers name as they like. */
export function keyOfOutput(output: HostOutput): string | null {
  if (output.kind === 'char') return output.char;
  return output.kind === 'dead' ? 'Dead' : null;
}
