/**
 * Twenty chords to make, as positions of a standard keyboard: keys of one hand and of both, two and three together, none
 * twice in a row. Eight have three keys; which and how many is judgement.
 */
export const CHORD_PROMPTS: readonly (readonly string[])[] = [
  'D F',
  'J K',
  'F J',
  'S D F',
  'J K L',
  'S D',
  'K L',
  'D K',
  'D F J',
  'U I',
  'S D F',
  'W E',
  'J K L',
  'S L',
  'D F',
  'F J K',
  'J K',
  'W E R',
  'I O',
  'U I O',
].map((keys) => keys.split(' ').map((key) => `Key${key}`));
