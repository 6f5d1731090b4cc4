import { codeName } from '../../../../core/host/code-names.ts';
import { decisionWords, isTelling } from '../../../../core/rehearse/decision-words.ts';
import { listed, ms, type Names, producedWord } from '../../../../core/rehearse/key-words.ts';
import { firstAt } from '../../../../core/rehearse/presses-between.ts';
import type { Decision, Run } from '../../../../core/rehearse/run.ts';
import { stateAt } from '../../../../core/rehearse/state-at.ts';

/** The state at a moment, as label and value. */
export function stateRows(run: Run, t: number, names: Names): readonly (readonly [string, string])[] {
  const { keysDown, layersOn, modifiersOn, waits, open } = stateAt(run, t);
  const orNone = (words: readonly string[]) => (words.length === 0 ? 'none' : words.join(', '));
  return [
    ['Layers on', orNone(layersOn.map((layer) => names.layer(layer)))],
    ['Modifiers on', orNone(modifiersOn.map(codeName))],
    [
      'Waits',
      waits === null
        ? 'nothing'
        : `${listed(waits.keys.map((key) => names.key(key)))} for ${listed(waits.chords.map((chord) => names.chord(chord)))}`,
    ],
    [
      'Open',
      open === null
        ? 'nothing'
        : `${'key' in open ? names.key(open.key) : names.chord(open.chord)}: tap or hold`,
    ],
    ['Keys down', orNone(keysDown.map((key) => names.key(key)))],
  ];
}

/** What happened at a moment, a sentence each. */
export function happenedAt(run: Run, t: number, names: Names): readonly string[] {
  const rows: string[] = [];
  for (let at = firstAt(run.events, t, (event) => event.t); run.events[at]?.t === t; at++) {
    const event = run.events[at];
    if (event !== undefined)
      rows.push(`${names.key(event.key)} ${event.type === 'down' ? 'goes down' : 'comes up'}`);
  }
  for (let at = firstAt(run.decisions, t, (each) => each.t); run.decisions[at]?.t === t; at++) {
    const decision = run.decisions[at];
    if (decision !== undefined && saysSomething(decision)) rows.push(decisionWords(run, decision, names));
  }
  for (let at = firstAt(run.items, t, (item) => item.t); run.items[at]?.t === t; at++) {
    const item = run.items[at];
    if (item !== undefined && item.produced.kind !== 'modifier') rows.push(`Out: ${word(item.produced)}`);
  }
  return rows;
}

/** A key that acts at once, or that makes a chord whole, is told by what follows from it. */
function saysSomething({ rule, what, t, data }: Decision): boolean {
  if (what === 'waiting') return (data?.until ?? t) > t;
  return rule !== 'S9' || what === 'open' || what === 'no-binding';
}

const UNSEEN: Readonly<Record<string, string>> = { ' ': 'Space', '\n': 'line break', '\t': 'Tab' };

function word(produced: Parameters<typeof producedWord>[0]): string {
  const text = producedWord(produced);
  return UNSEEN[text] ?? text;
}

/** A moment as it is read out. */
export function momentWords(run: Run, t: number, names: Names): string {
  const rows = happenedAt(run, t, names);
  return rows.length === 0 ? `at ${ms(t)}` : `at ${ms(t)}: ${rows.join('; ')}`;
}

/** A line of the time line in words. */
export interface WordRow {
  readonly t: number;
  readonly what: string;
  readonly isTelling: boolean;
}

/** Everything that happens from a moment on, in words, so many lines at most. */
export function wordRows(run: Run, from: number, most: number, names: Names): readonly WordRow[] {
  const rows: WordRow[] = [];
  let at = firstAt(run.events, from, ({ t }) => t);
  let decided = firstAt(run.decisions, from, ({ t }) => t);
  let out = firstAt(run.items, from, ({ t }) => t);
  while (rows.length < most) {
    const event = run.events[at];
    const decision = run.decisions[decided];
    const item = run.items[out];
    const t = Math.min(event?.t ?? Infinity, decision?.t ?? Infinity, item?.t ?? Infinity);
    if (event?.t === t) {
      at += 1;
      const how = event.type === 'down' ? 'goes down' : 'comes up';
      rows.push({ t, what: `${names.key(event.key)} ${how}`, isTelling: false });
    } else if (decision?.t === t) {
      decided += 1;
      if (saysSomething(decision))
        rows.push({ t, what: decisionWords(run, decision, names), isTelling: isTelling(run, decision) });
    } else if (item?.t === t) {
      out += 1;
      if (item.produced.kind !== 'modifier')
        rows.push({ t, what: `Out: ${word(item.produced)}`, isTelling: true });
    } else break;
  }
  return rows;
}
