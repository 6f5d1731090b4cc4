/** What a document may hold at most. Reading refuses more, with a sentence. */
export const LIMITS = {
  fileBytes: 2 * 1024 * 1024,
  keys: 200,
  layers: 32,
  chords: 500,
  hosts: 8,
  corrections: 400,
  nameLength: 80,
  notesLength: 20_000,
  needs: 5_000,
  diaryNotes: 1_000,
  noteKeys: 20,
} as const;
