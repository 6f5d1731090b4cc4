import { charNeeds, type NeedList, writtenNeeds } from './need-list.ts';

/** First and last printing character of ASCII: space and tilde (RFC 20, section 4). */
const FIRST_PRINTING = 0x20;
const LAST_PRINTING = 0x7e;

const printing = Array.from({ length: LAST_PRINTING - FIRST_PRINTING + 1 }, (_, at) =>
  String.fromCharCode(FIRST_PRINTING + at),
).join('');

/** Lists of characters that standards for exchange state. */
export const CHARACTER_LISTS: readonly NeedList[] = [
  {
    name: 'ascii',
    title: 'ASCII',
    description: 'The 95 printing characters of ASCII, space among them (RFC 20).',
    needs: charNeeds(printing),
  },
  {
    name: 'posix',
    title: 'POSIX portable characters',
    description:
      'The portable character set of POSIX.1-2017 (Base Definitions, 6.1): 95 printing characters, and its new line, tab and backspace as keys.',
    needs: [...charNeeds(printing), ...writtenNeeds(['Enter', 'Tab', 'Backspace'])],
  },
];
