import { producedWord } from './key-words.ts';
import type { Item } from './run.ts';

/** A character or key that came out, and what became of it. */
export interface Token {
  /** The character itself; a key by its name. */
  readonly text: string;
  readonly kind: 'char' | 'key';
  /** Its place among the run's items. */
  readonly item: number;
}

/** What came out, as a text field shows it: Backspace takes the character before it back. */
export interface ShownText {
  readonly tokens: readonly Token[];
  /** What was taken back, in the order in which it had been typed. */
  readonly takenBack: readonly Token[];
}

/** Reads what came out. Modifiers that were pressed for nothing are left out. */
export function shownText(items: readonly Item[]): ShownText {
  const tokens: Token[] = [];
  const takenBack: Token[] = [];
  for (const [item, { produced }] of items.entries()) {
    if (produced.kind === 'modifier') continue;
    const isBack =
      produced.kind === 'key' && produced.code === 'Backspace' && produced.modifiers.length === 0;
    const last = tokens.at(-1);
    if (isBack && last?.kind === 'char') {
      tokens.pop();
      takenBack.push(last);
    } else tokens.push({ text: producedWord(produced), kind: produced.kind, item });
  }
  return { tokens, takenBack };
}

/** The characters alone, as a plain text. */
export function plainText(tokens: readonly Token[]): string {
  return tokens.map(({ text, kind }) => (kind === 'char' ? text : '')).join('');
}
