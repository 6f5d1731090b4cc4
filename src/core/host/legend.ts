import { layerWords } from '../keymap/action-words.ts';
import { type Code, isModifier, type Modifier } from '../keymap/codes.ts';
import type { Action, Chord, Keymap, ShiftedAction } from '../keymap/types.ts';
import { codeLabel, codeName } from './code-names.ts';
import type { HostLayout } from './host-layout.ts';

/** What legends are told by: the layers' names, and what the computer makes of a key. */
export interface LegendSource {
  readonly keymap: Keymap;
  /** Null where the host layout is not there yet: keys then go by their names. */
  readonly host: HostLayout | null;
}

/** An action as it stands on a key: one sign or a short word, "" for a blank. */
export function legendOf(action: Action, source: LegendSource): string {
  switch (action.do) {
    case 'key':
      return strokeLegend(action.code, action.with ?? [], source.host);
    case 'char':
      return charLegend(action.char);
    case 'text':
      return `“${action.text.replace(/\s+/gu, ' ')}”`;
    case 'layer':
      return `${layerWords(source.keymap, action.layer)}${modeWord(action.mode)}`;
    case 'modifier':
      return `${codeLabel(action.code)}${modeWord(action.mode)}`;
    case 'nothing':
      return '';
    case 'repeat':
      return 'Repeat';
    case 'word-shift':
      return 'Shift word';
    case 'board':
      return action.label;
  }
}

/** An action in full words, as it is read out: "Left Control + C", "layer Symbols, latch". */
export function actionInWords(action: Action, source: LegendSource): string {
  switch (action.do) {
    case 'key':
      return strokeInWords(action.code, action.with ?? [], source.host);
    case 'char':
      return charInWords(action.char);
    case 'text':
      return `text “${action.text.replace(/\s+/gu, ' ')}”`;
    case 'layer':
      return `layer ${layerWords(source.keymap, action.layer)}${action.mode === 'while-held' ? ' while held' : `, ${action.mode}`}`;
    case 'modifier':
      return `${codeName(action.code)}, ${action.mode}`;
    case 'nothing':
      return 'blank';
    case 'repeat':
      return 'repeat the last output';
    case 'word-shift':
      return 'Shift for one word';
    case 'board':
      return `board: ${action.label}`;
  }
}

/** A tap as it stands on a key, with what comes in its place under Shift: ", ⇧;". */
export function tapLegend(tap: Action, onShift: ShiftedAction | undefined, source: LegendSource): string {
  const plain = legendOf(tap, source);
  const shifted = onShift === undefined ? '' : legendOf(onShift, source);
  return shifted === '' ? plain : `${plain} ⇧${shifted}`;
}

/** A tap in full words, with what comes in its place under Shift: ", (under Shift ;)". */
export function tapInWords(tap: Action, onShift: ShiftedAction | undefined, source: LegendSource): string {
  const plain = actionInWords(tap, source);
  return onShift === undefined ? plain : `${plain} (under Shift ${actionInWords(onShift, source)})`;
}

/** What a chord does, in full words: its tap, under Shift, held. */
export function chordDoes({ action, onShift, hold }: Omit<Chord, 'id'>, source: LegendSource): string {
  const tap = tapInWords(action, onShift, source);
  return hold === undefined ? tap : `${tap}, held: ${actionInWords(hold, source)}`;
}

/** Characters that leave no mark of their own, with the words for them. */
const UNSEEN: Readonly<Record<string, readonly [legend: string, words: string]>> = {
  ' ': ['Space', 'Space'],
  '\t': ['Tab', 'Tab character'],
  '\n': ['Line', 'line break'],
  '\u00a0': ['nbsp', 'no-break space'],
  '\u202f': ['nnbsp', 'narrow no-break space'],
  '\u2009': ['thin', 'thin space'],
  '\u00ad': ['shy', 'soft hyphen'],
  '\u200b': ['zwsp', 'zero-width space'],
  '\u200c': ['zwnj', 'zero-width non-joiner'],
  '\u200d': ['zwj', 'zero-width joiner'],
};

function charLegend(char: string): string {
  const unseen = UNSEEN[char];
  if (unseen !== undefined) return unseen[0];
  // A mark that sits on the letter before it needs something to sit on.
  return /^\p{M}/u.test(char) ? `◌${char}` : char;
}

function charInWords(char: string): string {
  return UNSEEN[char]?.[1] ?? charLegend(char);
}

function modeWord(mode: 'while-held' | 'latch' | 'lock'): string {
  return mode === 'while-held' ? '' : ` ${mode}`;
}

const isShift = (code: Modifier): boolean => code === 'ShiftLeft' || code === 'ShiftRight';

/** The character that a stroke types, letters without Shift as capitals; undefined where it types none. */
function typedBy(code: Code, shift: boolean, host: HostLayout | null): string | undefined {
  if (host === null || code.startsWith('Numpad')) return undefined;
  const output = host.outputOf(code, { shift, level3: false, caps: false });
  if (output.kind !== 'char' || UNSEEN[output.char] !== undefined) return undefined;
  const capital = output.char.toLocaleUpperCase('en');
  return shift || [...capital].length > 1 ? output.char : capital;
}

function strokeLegend(code: Code, modifiers: readonly Modifier[], host: HostLayout | null): string {
  const shifted = modifiers.length > 0 && modifiers.every(isShift) ? typedBy(code, true, host) : undefined;
  if (shifted !== undefined && shifted !== typedBy(code, false, host)) return shifted;
  return [...modifiers.map(codeLabel), typedBy(code, false, host) ?? codeLabel(code)].join(' ');
}

function strokeInWords(code: Code, modifiers: readonly Modifier[], host: HostLayout | null): string {
  return [...modifiers.map(codeName), codeInWords(code, host)].join(' + ');
}

/** A key by what it types on the computer, else by its plain name. */
export function codeInWords(code: Code, host: HostLayout | null): string {
  return isModifier(code) ? codeName(code) : (typedBy(code, false, host) ?? codeName(code));
}
