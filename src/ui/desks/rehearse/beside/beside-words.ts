import type { Comparison } from '../../../../core/rehearse/compare.ts';
import { ms, producedWord } from '../../../../core/rehearse/key-words.ts';
import type { Item } from '../../../../core/rehearse/run.ts';

const SEEN: Readonly<Record<string, string>> = { ' ': '␣', '\n': '⏎', '\t': '⇥' };

/** What one side gave, signs together and keys by name; a dash for nothing. */
export function differenceWords(items: readonly Item[]): string {
  const words = items.map(({ produced }) => {
    const word = producedWord(produced);
    return produced.kind === 'char' ? (SEEN[word] ?? word) : ` ${word} `;
  });
  const text = words.join('').trim();
  return text === '' ? '–' : text;
}

/** How the two runs compare, in one or two sentences. */
export function laterWords(count: number, alike: number, later: Comparison['laterMs']): string {
  const outputs = alike === 1 ? '1 output' : `${alike.toLocaleString('en')} outputs`;
  const differ =
    count === 0
      ? `Nothing differs in ${outputs}.`
      : `${count} ${count === 1 ? 'place differs' : 'places differ'}; ${outputs} ${alike === 1 ? 'is' : 'are'} alike.`;
  if (later === null || (Math.round(later.mean * 10) === 0 && Math.round(later.most * 10) === 0))
    return differ;
  const way = (value: number) => `${ms(Math.abs(value))} ${value < 0 ? 'sooner' : 'later'}`;
  return `${differ} What is alike comes ${way(later.mean)} beside it on average, ${way(later.most)} at most.`;
}
