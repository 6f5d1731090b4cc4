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
 * The table of two and three strokes, less what Unicode's canonical composition gives anyway. Later lines of the
 * file override earlier ones, as in libX11.
 */
export function composeTable(sequences: readonly ComposeSequence[], keysyms: KeysymTable): ComposeTable {
  const table: Record<string, Record<string, string>> = {};
  for (const { names, result } of sequences) {
    const keys = names.map((name) => keysyms.outputOf(name));
    const next = keys.pop() ?? '';
    const isShort = keys.length <= 2 && next !== '' && keys.every((key) => key.startsWith('dead_'));
    if (!isShort || canonicalCompose(keys, next) === result) continue;
    const row = table[keys.join(' ')] ?? {};
    row[next] = result;
    table[keys.join(' ')] = row;
  }
  return table;
}
