import { type ComposeTable, canonicalCompose } from '../../core/host/compose.ts';
import type { KeysymTable } from './keysyms.ts';

/** One sequence of a Compose file: the keysym names pressed, and the text. */
export interface ComposeSequence {
  readonly names: readonly string[];
  readonly result: string;
}

const LINE = /^((?:<\w+>\s*)+):\s*"((?:[^"\\]|\\.)*)"/;

/** Reads the sequences that begin with a dead key out of a libX11 Compose file; Multi_key sequences are left aside. */
export function readComposeFile(text: string): readonly ComposeSequence[] {
  return text.split('\n').flatMap((line) => {
    const [, keys = '', result = ''] = LINE.exec(line) ?? [];
    const names = [...keys.matchAll(/<(\w+)>/g)].map((match) => match[1] ?? '');
    if (names[0]?.startsWith('dead_') !== true) return [];
    return [{ names, result: result.replace(/\\(.)/g, '$1').normalize('NFC') }];
  });
}

/**
 * The sequences of two and three strokes whose every part is among the outputs of a layout, less what Unicode's
 * canonical composition gives anyway. A later line of the file overrides an earlier one, as in libX11.
 */
export function composeTable(
  sequences: readonly ComposeSequence[],
  outputs: ReadonlySet<string>,
  keysyms: Pick<KeysymTable, 'outputOf'>,
): ComposeTable {
  const table: Record<string, Record<string, string>> = {};
  for (const { names, result } of sequences) {
    if (names.length > 3) continue;
    const keys = names.map((name) => keysyms.outputOf(name));
    const next = keys.at(-1) ?? '';
    const dead = keys.slice(0, -1);
    const isOurs = keys.every((key) => outputs.has(key)) && dead.every((key) => key.startsWith('dead_'));
    if (!isOurs || canonicalCompose(dead, next) === result) continue;
    table[dead.join(' ')] = { ...table[dead.join(' ')], [next]: result };
  }
  return table;
}
