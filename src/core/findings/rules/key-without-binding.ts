import { keyName } from '../../board/key-name.ts';
import { finding, type Rule } from '../rule.ts';
import { sentence } from '../wording.ts';

const id = 'key-without-binding';

/** Looks for keys that no layer binds and no chord uses. */
export const keyWithoutBinding: Rule = {
  id,
  title: 'Key without any binding',
  why: 'It is there to be used, or could be left off the board.',
  check({ keymap, grid, chords }) {
    const inChords = new Set(chords.flatMap((chord) => chord.keys));
    return keymap.board.keys.flatMap((key, number) => {
      if ((grid.bound[number] ?? 0) !== 0 || inChords.has(number)) return [];
      const name = keyName(keymap.board, key.id);
      return finding({
        rule: id,
        messageId: 'unused',
        severity: 'note',
        message: sentence(`${name} does nothing: no layer binds it and no chord uses it.`),
        keys: [key.id],
        data: { key: name },
      });
    });
  },
};
