import type { TextChoice } from '../../../../store/make-typist.ts';

/** What there is to type: a paragraph that is given, or whatever comes to mind. */
export type ParagraphChoice = 'english' | 'german' | 'own';

/** Short texts of our own, without capitals where the language allows it: Shift breaks the run of presses. */
export const PARAGRAPHS: Readonly<Record<Exclude<ParagraphChoice, 'own'>, string>> = {
  english:
    'the harbour pilot keeps a small book in which she writes what the tide did each morning. most pages say the same thing in other words, but once in a while there is a line that nobody expected: the water came in quietly, stood still for an hour as if it had forgotten something, and then went out again faster than any of the old charts would have it.',
  german:
    'die lotsin im hafen hat ein kleines buch, in das sie jeden morgen schreibt, was die flut getan hat. auf den meisten seiten steht mit anderen worten das gleiche, aber ab und zu kommt ein satz, den niemand erwartet hat: das wasser lief leise herein, stand eine stunde still, als habe es etwas vergessen, und ging dann schneller hinaus, als es in den karten steht.',
};

export const PARAGRAPH_CHOICES: readonly { readonly value: ParagraphChoice; readonly label: string }[] = [
  { value: 'english', label: 'this, in English' },
  { value: 'german', label: 'the same in German' },
  { value: 'own', label: 'something of my own' },
];

/** The paragraph to begin with, by the text that is chosen for the estimates. */
export function firstParagraph(text: TextChoice): ParagraphChoice {
  if (text === 'german' || text === 'english') return text;
  return text === 'code' || text === 'own' ? 'english' : 'own';
}
