import { charNeeds, type NeedList } from './need-list.ts';

const SMALL = 'abcdefghijklmnopqrstuvwxyz';
const CAPITAL = SMALL.toUpperCase();
const DIGITS = '0123456789';

interface Grammar {
  readonly name: string;
  readonly title: string;
  /** The document and the sections from which the tokens are taken. */
  readonly source: string;
  /** Letters and digits that names, numbers and keywords need. */
  readonly words: string;
  /** Operators, delimiters, quotes, comment and escape marks as the grammar writes them, a space between. */
  readonly tokens: string;
}

const GRAMMARS: readonly Grammar[] = [
  {
    name: 'ecmascript',
    title: 'ECMAScript (JavaScript)',
    source:
      'ECMA-262, 2024 edition, chapter 12: names, punctuators, literals, comments, templates, private names',
    words: `${SMALL}${CAPITAL}${DIGITS}`,
    tokens: `{ ( ) [ ] . ... ; , < > <= >= == != === !== + - * % ** ++ -- << >> >>> & | ^ ! ~ && || ?? ? ?. : = += -=
      *= %= **= <<= >>= >>>= &= |= ^= &&= ||= ??= => / /= } $ _ # #! \\ ' " \` \${ // /* */`,
  },
  {
    name: 'python',
    title: 'Python',
    source: 'The Python Language Reference 3, chapter 2: names, literals, operators, delimiters, comments',
    words: `${SMALL}${CAPITAL}${DIGITS}`,
    tokens: `+ - * ** / // % @ << >> & | ^ ~ := < > <= >= == != ( ) [ ] { } , : ! . ; = -> += -= *= /= //= %= @= &= |=
      ^= >>= <<= **= ' " # \\ _ ...`,
  },
  {
    name: 'c',
    title: 'C',
    source: 'ISO/IEC 9899:2018, 5.2.1: the basic source character set, less its control characters',
    words: `${CAPITAL}${SMALL}${DIGITS}`,
    tokens: `! " # % & ' ( ) * + , - . / : ; < = > ? [ \\ ] ^ _ { | } ~`,
  },
  {
    name: 'rust',
    title: 'Rust',
    source:
      'The Rust Reference, "Tokens" and "Comments": names, literals, lifetimes, punctuation, delimiters',
    words: `${SMALL}${CAPITAL}${DIGITS}`,
    tokens: `+ - * / % ^ ! & | && || << >> += -= *= /= %= ^= &= |= <<= >>= = == != > < >= <= @ _ . .. ... ..= , ; : ::
      -> <- => # $ ? ~ { } [ ] ( ) ' " \\ // /* */`,
  },
  {
    name: 'bash',
    title: 'Bash',
    source:
      'Bash Reference Manual, chapters 3 and 6: quoting, operators, expansions, redirections, patterns, arithmetic',
    words: `${SMALL}${CAPITAL}${DIGITS}`,
    tokens: `| & ; ( ) < > && || ;; ;& ;;& |& >> << <<< <<- >& <& &> >| <> ! { } [[ ]] \\ ' " $ \${ $( \` ~ * ? [ ] @ # -
      + : := :- :+ / // % %% ## ^ ^^ , ,, _ = += == =~ != <= >= ++ -- ** .`,
  },
  {
    name: 'html',
    title: 'HTML',
    source:
      'HTML Living Standard, 13.1 and 2.3: tags, attributes, comments, doctype, character references, names, numbers',
    words: `${SMALL}${CAPITAL}${DIGITS}`,
    tokens: `< > </ /> = " ' & ; &# <!-- --> <! <![ [ ]]> . : _`,
  },
  {
    name: 'json',
    title: 'JSON',
    source: 'RFC 8259, sections 2 to 7: structure, literals, numbers, and the marks and escapes of strings',
    words: `truefalsn${DIGITS}eEbABCDEFcd`,
    tokens: `{ } [ ] : , " \\ / - + .`,
  },
];

/** What the grammar of a language is written with: the characters of its tokens, space among them. */
export const LANGUAGE_LISTS: readonly NeedList[] = GRAMMARS.map(({ name, title, source, words, tokens }) => ({
  name,
  title,
  description: `The characters of its grammar, strings and comments apart (${source}).`,
  needs: charNeeds(`${words} ${tokens.replace(/\s+/g, '')}`),
}));
