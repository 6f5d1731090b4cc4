/** Where a text stops being JSON (RFC 8259). Lines and columns count from 1, columns in UTF-16 units. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly expected: string;
}

type State = 'value' | 'first-item' | 'first-name' | 'name' | 'colon' | 'after';

interface Scan {
  readonly text: string;
  at: number;
  state: State;
  /** The lists and objects that are open, outermost first. */
  readonly open: ('[' | '{')[];
}

const EXPECTED: Readonly<Record<State, string>> = {
  value: 'a value',
  'first-item': 'a value or ]',
  'first-name': 'a name in quotation marks or }',
  name: 'a name in quotation marks',
  colon: 'a colon',
  after: 'a comma or the closing bracket',
};

/**
 * The first fault of a text that JSON.parse refuses; undefined where the text is JSON. The messages of JSON.parse
 * differ from engine to engine and often lack the position.
 */
export function findJsonFault(text: string): JsonFault | undefined {
  const scan: Scan = { text, at: 0, state: 'value', open: [] };
  for (;;) {
    scan.at = after(/[ \t\n\r]*/y, text, scan.at) ?? scan.at;
    if (scan.state === 'after' && scan.open.length === 0) {
      return scan.at === text.length ? undefined : faultAt(scan, 'the end');
    }
    const expected = step(scan);
    if (expected !== undefined) return faultAt(scan, expected);
  }
}

/** Reads one token; gives what was expected where there is another. */
function step(scan: Scan): string | undefined {
  const sign = scan.text[scan.at];
  switch (scan.state) {
    case 'value':
      return value(scan);
    case 'first-item':
      return sign === ']' ? close(scan) : value(scan);
    case 'first-name':
      return sign === '}' ? close(scan) : nameIn(scan);
    case 'name':
      return nameIn(scan);
    case 'colon':
      return sign === ':' ? move(scan, 'value') : EXPECTED.colon;
    case 'after':
      return afterValue(scan);
  }
}

function afterValue(scan: Scan): string | undefined {
  const sign = scan.text[scan.at];
  const inList = scan.open.at(-1) === '[';
  if (sign === ',') return move(scan, inList ? 'value' : 'name');
  if (sign === (inList ? ']' : '}')) return close(scan);
  return `a comma or ${inList ? ']' : '}'}`;
}

function move(scan: Scan, state: State): undefined {
  scan.at += 1;
  scan.state = state;
}

function close(scan: Scan): undefined {
  scan.open.pop();
  move(scan, 'after');
}

function value(scan: Scan): string | undefined {
  const sign = scan.text[scan.at];
  if (sign === '[' || sign === '{') {
    scan.open.push(sign);
    return move(scan, sign === '[' ? 'first-item' : 'first-name');
  }
  if (sign === '"') return quotedText(scan, 'after');
  const end = after(/true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y, scan.text, scan.at);
  if (end === undefined) return EXPECTED[scan.state];
  scan.at = end;
  scan.state = 'after';
  return undefined;
}

function nameIn(scan: Scan): string | undefined {
  return scan.text[scan.at] === '"' ? quotedText(scan, 'colon') : EXPECTED[scan.state];
}

/** Goes over a text in quotation marks sign by sign: a pattern would need stack for long ones. */
function quotedText(scan: Scan, next: State): string | undefined {
  const { text } = scan;
  for (scan.at += 1; text[scan.at] !== '"'; scan.at += 1) {
    const sign = text[scan.at];
    if (sign === undefined) return 'a closing quotation mark';
    if (sign < ' ') return 'no control character in a text';
    if (sign !== '\\') continue;
    const end = after(/\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y, text, scan.at);
    if (end === undefined) return 'a known escape after \\';
    scan.at = end - 1;
  }
  return move(scan, next);
}

/** The end of what a sticky pattern matches at a place; undefined where it does not match. */
function after(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

function faultAt({ text, at }: Scan, expected: string): JsonFault {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const sign = text.codePointAt(at);
  const found = sign === undefined ? 'the end of the text' : JSON.stringify(String.fromCodePoint(sign));
  return { line, column: at - before.lastIndexOf('\n'), found, expected };
}
