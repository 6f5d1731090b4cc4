import { needInWords } from '../../../core/findings/wording.ts';
import { codeLabel, codeName } from '../../../core/host/code-names.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { codeInWords, legendOf } from '../../../core/host/legend.ts';
import { isCode } from '../../../core/keymap/codes.ts';
import { parseNeed } from '../../../core/keymap/need.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import type { Prompt } from '../../../core/practice/drill.ts';
import type { Estimate } from '../../../core/practice/estimates.ts';
import type { NeedGroup } from '../../../core/practice/groups.ts';
import type { RankedNeed } from '../../../core/practice/ranked-needs.ts';
import type { PracticeInput } from '../../../core/practice/session.ts';
import type { Card } from '../../../core/practice/spacing.ts';
import type { Standing } from '../../../core/practice/standing.ts';

/** A need as a prompt shows it. */
export interface NeedSign {
  readonly glyph: string;
  /** In full words, for reading out. */
  readonly name: string;
  /** A word rather than one sign. */
  readonly isWord: boolean;
}

/** The sign of a need as a keymap writes it. */
export function signOf(text: string, keymap: Keymap, host: HostLayout): NeedSign {
  const read = parseNeed(text);
  if (!read.ok) return { glyph: text, name: text, isWord: true };
  const need = read.value;
  const name = needInWords(host, need);
  if (need.kind === 'char') {
    const glyph = need.char === ' ' ? '␣' : legendOf({ do: 'char', char: need.char }, { keymap, host });
    return { glyph, name, isWord: [...glyph].length > 2 };
  }
  if (need.kind === 'key') {
    const glyph = codeLabel(need.code);
    return { glyph: glyph.length <= 1 ? glyph : name, name, isWord: glyph.length > 1 };
  }
  return { glyph: [...need.modifiers, codeInWords(need.code, host)].join(' + '), name, isWord: true };
}

/** A key of the keyboard at hand that is laid onto no key of the board, and where it shows which are. */
export function strayWords(code: string): string {
  const name = isCode(code) ? codeName(code) : code;
  return `${name} stands for no key of the board. Pause, and “My keyboard” under the board shows which key is which.`;
}

/** Headings of the needs by how they stand. */
export const STANDING_TITLES: Readonly<Record<Standing, string>> = {
  changed: 'Moved, to be relearnt',
  new: 'New',
  wrong: 'Goes wrong',
  slow: 'Slow',
  due: 'Due again',
  known: 'Known',
};

export const GROUP_TITLES: Readonly<Record<NeedGroup, string>> = {
  letters: 'Letters',
  digits: 'Digits',
  symbols: 'Symbols',
  keys: 'Keys',
  shortcuts: 'Shortcuts',
};

const PROMPT_REASONS: Readonly<Record<Standing, string>> = {
  changed: 'moved',
  new: 'new',
  wrong: 'went wrong lately',
  slow: 'slow so far',
  due: 'due again',
  known: 'known, mixed in',
};

/** Why a prompt is asked for: "new, as it stands in English". */
export function promptReason(prompt: Prompt, textTitle: string | null): string {
  const reason = PROMPT_REASONS[prompt.standing];
  if (prompt.shape === 'company')
    return textTitle === null ? reason : `${reason}, as it stands in “${textTitle}”`;
  return prompt.shape === 'transition' ? `${reason}, there and back` : reason;
}

/** Counts and what they are of. */
export function count(number: number, one: string, many: string): string {
  return `${number.toLocaleString('en')} ${number === 1 ? one : many}`;
}

/** So many are worked at in a session before the next ones come. */
const FEW = 10;

/** What the design asks for and does not type, in a sentence; nothing where there is no such need. */
export function untypedWords(untyped: number): string | null {
  if (untyped === 0) return null;
  const needs = untyped === 1 ? '1 need' : `${untyped.toLocaleString('en')} needs`;
  return `${needs} of the design cannot be typed yet and ${untyped === 1 ? 'is' : 'are'} left out: the design desk says why.`;
}

/** What waits, in a sentence or two. group: what is wished for, null for everything. */
export function waitingWords(ranked: readonly RankedNeed[], group: NeedGroup | null): string {
  if (ranked.length === 0) {
    return 'This design types none of its needs. Choose what you type and give it keys on the design desk first.';
  }
  const wished = ranked.filter((need) => group === null || need.group === group);
  if (wished.length === 0) {
    const what = GROUP_TITLES[group ?? 'letters'].toLowerCase();
    return `No ${what} among the ${count(ranked.length, 'need', 'needs')} that this design types: choose something else below.`;
  }
  const of = (standing: Standing) => wished.filter((each) => each.standing === standing).length;
  if (of('new') === wished.length) {
    const order = wished.length > FEW ? ' The most frequent come first, ten at a time.' : '';
    return `${count(wished.length, 'need', 'needs')}, none of them practised yet.${order}`;
  }
  const parts = [
    [of('changed'), 'moved'],
    [of('new'), 'new'],
    [of('wrong'), 'going wrong'],
    [of('slow'), 'slow'],
    [of('due'), 'due again'],
  ] as const;
  const waiting = parts.filter(([number]) => number > 0).map(([number, word]) => `${number} ${word}`);
  if (waiting.length === 0) return 'Nothing is due. A session now keeps what is known.';
  return `Of ${count(wished.length, 'need', 'needs')}: ${waiting.join(', ')}.`;
}

const percent = (share: number) => `${Math.round(share * 100)} %`;

/** A share with its doubt: "17 % wrong, likely between 5 and 45 %". */
export function shareWords({ value, low, high }: Estimate): string {
  if (low === null || high === null) return `${percent(value)} wrong`;
  return `${percent(value)} wrong, likely between ${Math.round(low * 100)} and ${percent(high)}`;
}

/** A time with its doubt: "420 ms, likely between 380 and 510". */
export function timeWords(estimate: Estimate | null): string {
  if (estimate === null) return 'not timed yet';
  const { value, low, high } = estimate;
  const ms = Math.round(value);
  if (low === null && high === null) return `${ms} ms, too few to say how sure`;
  if (low === null) return `${ms} ms, likely under ${Math.round(high ?? 0)}`;
  if (high === null) return `${ms} ms, likely over ${Math.round(low)}`;
  return `${ms} ms, likely between ${Math.round(low)} and ${Math.round(high)}`;
}

const DAY_MS = 24 * 60 * 60 * 1000;

/** When a need comes again: "again today", "tomorrow", "in 6 days", "now". */
export function dueWords({ dueAt, again }: Card, now: number): string {
  if (again) return 'again today';
  if (dueAt === null) return 'not planned yet';
  const days = Math.round((dueAt - now) / DAY_MS);
  if (days <= 0) return 'now';
  return days === 1 ? 'tomorrow' : `in ${days} days`;
}

/** Minutes of a session that have gone: "2 of 7 min". */
export function minutesWords(activeMs: number, minutes: number): string {
  return `${Math.floor(activeMs / 60_000)} of ${minutes} min`;
}

/** How the next session is to be, in a line: "Everything, 7 minutes, on any keyboard laid onto the board". */
export function choicesWords(choices: {
  readonly group: NeedGroup | null;
  readonly minutes: number;
  readonly input: PracticeInput;
}): string {
  const what = choices.group === null ? 'Everything' : GROUP_TITLES[choices.group];
  const where = choices.input === 'engine' ? 'on any keyboard laid onto the board' : 'on the real board';
  return `${what}, ${choices.minutes} minutes, ${where}`;
}
