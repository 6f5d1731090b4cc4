import { bindingThrough } from '../keymap/lookup.ts';
import { differences } from './align.ts';
import { decisionWords, isTelling, lateKey } from './decision-words.ts';
import { listed, type Names } from './key-words.ts';
import type { Decision, Run } from './run.ts';
import { shownText, type Token } from './shown-text.ts';
import { stateAt } from './state-at.ts';

/** A place where something else came out than was meant. */
export interface Slip {
  /** Half-open, by character of the meant text. */
  readonly meantFrom: number;
  readonly meantTo: number;
  readonly meant: string;
  readonly came: readonly Token[];
  /** From the last press that gave what was meant to the next that did, ms, both excluded. */
  readonly fromMs: number;
  readonly toMs: number;
  /** What was decided there, by its place in the run, the likeliest cause first. */
  readonly causes: readonly number[];
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A meant text in characters, as they are compared. */
export function charactersOf(meant: string): readonly string[] {
  const text = meant.normalize('NFC').replace(/\r\n?/g, '\n');
  return [...graphemes.segment(text)].map(({ segment }) => segment);
}

/** Where what came out differs from what was meant, in order of the text. */
export function slipsOf(run: Run, meant: string): readonly Slip[] {
  const chars = charactersOf(meant);
  const { tokens } = shownText(run.items);
  const found = differences(
    chars,
    tokens.map(({ text }) => text),
  );
  return found.map(({ oneFrom, oneTo, otherFrom, otherTo }) => {
    const came = tokens.slice(otherFrom, otherTo);
    const fromMs = pressedAt(run, tokens[otherFrom - 1]) ?? Number.NEGATIVE_INFINITY;
    const toMs = pressedAt(run, tokens[otherTo]) ?? Number.POSITIVE_INFINITY;
    const slip = { meantFrom: oneFrom, meantTo: oneTo, meant: chars.slice(oneFrom, oneTo).join(''), came };
    return { ...slip, fromMs, toMs, causes: causesOf(run, { ...slip, fromMs, toMs }) };
  });
}

/** When the key went down that gave a character, ms. */
function pressedAt(run: Run, token: Token | undefined): number | undefined {
  if (token === undefined) return undefined;
  const item = run.items[token.item];
  const decision = run.decisions[item?.cause ?? -1];
  return decision?.data?.since ?? item?.t;
}

function causesOf(run: Run, slip: Omit<Slip, 'causes'>): readonly number[] {
  const caused = new Set(slip.came.map(({ item }) => run.items[item]?.cause ?? -1));
  const weighed: { readonly at: number; readonly weight: number }[] = [];
  for (const [at, decision] of run.decisions.entries()) {
    const since = decision.data?.since ?? decision.t;
    const isInside = since > slip.fromMs && since < slip.toMs;
    if (!isInside && !caused.has(at)) continue;
    const weight = weightOf(run, slip, decision, caused.has(at));
    if (weight > 0) weighed.push({ at, weight });
  }
  return weighed.sort((one, other) => other.weight - one.weight || one.at - other.at).map(({ at }) => at);
}

/** How likely a decision is what went wrong; 0: it cannot be. Ours, without a source: it only orders what is shown. */
function weightOf(run: Run, slip: Omit<Slip, 'causes'>, decision: Decision, gaveWhatCame: boolean): number {
  switch (decision.what) {
    case 'chord':
      return 8;
    case 'hold':
      if (decision.rule === 'S9') return 0;
      return tapWouldType(run, decision, slip.meant) ? 9 : 3;
    case 'no-chord':
      if (!isTelling(run, decision)) return 0;
      return lateKey(run, decision) === undefined ? 5 : 7;
    case 'no-binding':
    case 'no-route':
      return 6;
    case 'tap':
      if (decision.rule === 'S9') return 0;
      return gaveWhatCame ? 4 : 2;
    default:
      return 0;
  }
}

/** Whether the key's tap would have given a character that was meant and did not come. */
function tapWouldType(run: Run, { key = '', t }: Decision, meant: string): boolean {
  const before = new Set(stateAt(run, t - 0.001).layersOn);
  const tap = bindingThrough(run.keymap, before, key)?.binding.tap;
  const all = meant.toLowerCase();
  if (tap?.do === 'char') return all.includes(tap.char.toLowerCase());
  if (tap?.do !== 'key') return false;
  const typed = run.host.outputOf(tap.code, { shift: false, level3: false, caps: false });
  return typed.kind === 'char' && all.includes(typed.char.toLowerCase());
}

/** Why it came otherwise, in one sentence. */
export function slipReason(run: Run, slip: Slip, names: Names): string {
  const cause = run.decisions[slip.causes[0] ?? -1];
  if (cause !== undefined) return decisionWords(run, cause, names);
  const keys = slip.came.flatMap(({ item }) => {
    const decision = run.decisions[run.items[item]?.cause ?? -1];
    return decision?.key === undefined ? [] : [names.key(decision.key)];
  });
  if (keys.length > 0) return `${listed([...new Set(keys)])} was pressed, and nothing else was decided there`;
  return 'No key was pressed for it';
}

/** A slip in a few words: “th” came as Tab. */
export function slipTitle({ meant, came }: Slip): string {
  const out = came.map(({ text, kind }) => (kind === 'char' ? seen(text) : `⟨${text}⟩`)).join('');
  if (meant === '') return `${out} came unasked`;
  if (out === '') return `“${seen(meant)}” did not come`;
  return `“${seen(meant)}” came as ${out}`;
}

/** Spaces and breaks made visible. */
function seen(text: string): string {
  return text.replaceAll(' ', '␣').replaceAll('\n', '⏎').replaceAll('\t', '⇥');
}
