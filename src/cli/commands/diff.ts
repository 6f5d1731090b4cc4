import { parseArgs } from 'node:util';
import { LOAD_CAUTION } from '../../core/base/care.ts';
import { needText } from '../../core/keymap/need.ts';
import { type AccidentChange, isWorse } from '../../core/versions/accident-changes.ts';
import { type ChangeRow, changeRows } from '../../core/versions/change-rows.ts';
import { compareKeymaps } from '../../core/versions/compare.ts';
import { compareTyping, type TypingComparison } from '../../core/versions/compare-typing.ts';
import { findCounts } from '../find-counts.ts';
import { needWords } from '../need-report.ts';
import { needsToCheck } from '../needs-to-check.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';
import { personOf } from '../person-of.ts';
import { plainTable, shown } from '../plain-table.ts';

/** So many characters to learn anew, and accidents that changed, are named for people; --json has them all. */
const NAMED = 12;

/**
 * `diff A B [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--json]`: what differs between two designs, in words by key and layer, and
 * what it does to needs, accidents and hands. Exit code 1 where B no longer types what A does.
 */
export function diffCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      text: { type: 'string', default: 'english' },
      wpm: { type: 'string' },
      typist: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  const [fileA, fileB, ...more] = positionals;
  if (fileA === undefined || fileB === undefined || more.length > 0)
    return refused('diff wants two designs.');
  const person = personOf(values);
  if (!person.ok) return refused(person.problem);
  const text = findCounts(values.text);
  if (!text.ok) return refused(text.problem);
  const [before, after] = [openTyped(fileA), openTyped(fileB)];
  if (!before.ok) return refused(before.problem);
  if (!after.ok) return refused(after.problem);
  const hosts = { before: before.value.host, after: after.value.host };
  const rows = changeRows(compareKeymaps(before.value.keymap, after.value.keymap), hosts);
  const typing = compareTyping(before.value, after.value, text.value, person.value);
  const output = values.json
    ? JSON.stringify(plainDiff(rows, typing))
    : diffText([before.value.keymap.name, after.value.keymap.name], rows, typing, values.text);
  return answered(output, typing.needs.lost.length === 0 ? 0 : 1);
}

function openTyped(file: string) {
  const design = openDesign(file);
  if (!design.ok) return design;
  const needs = needsToCheck(design.value.keymap, []);
  return needs.ok ? { ok: true as const, value: { ...design.value, needs: needs.value } } : needs;
}

function plainDiff(rows: readonly ChangeRow[], { needs, accidents, relearning }: TypingComparison): object {
  const { gained, lost, cheaper, dearer, before, after } = needs;
  const costs = (changes: typeof cheaper) =>
    changes.map((change) => ({ ...change, need: needText(change.need) }));
  return {
    same: rows.length === 0,
    changes: rows,
    needs: {
      before,
      after,
      gained: gained.map(needText),
      lost: lost.map(needText),
      cheaper: costs(cheaper),
      dearer: costs(dearer),
    },
    accidents,
    relearning,
  };
}

function diffText(
  [before, after]: readonly [string, string],
  rows: readonly ChangeRow[],
  { needs, accidents, relearning }: TypingComparison,
  text: string,
): string {
  const names = (list: typeof needs.gained) => list.map(needWords).join(' ');
  const figures = [
    ['', 'before', 'after'],
    ['needs reached', ofAsked(needs.before), ofAsked(needs.after)],
    ['clumsy', String(needs.before.clumsy), String(needs.after.clumsy)],
    ['misfires per 1,000 words', ...both(accidents, 'misfiresPer1000Words')],
    ['worst misses per 1,000 uses', ...both(accidents, 'worstMissesPer1000Uses')],
    ['letters wait, mean ms', ...both(accidents, 'meanDelayMs')],
  ];
  const learnt = relearning.characters.slice(0, NAMED).map(({ char }) => JSON.stringify(char).slice(1, -1));
  return [
    `${shown(before)} → ${shown(after)}`,
    rows.length === 0
      ? 'Nothing differs.'
      : plainTable(rows.map(({ where, what }) => [where === '' ? 'the design' : where, what])),
    plainTable(figures),
    ...accidentLines('Worse', accidents.changes.filter(isWorse)),
    ...accidentLines(
      'Better',
      accidents.changes.filter((change) => !isWorse(change)),
    ),
    ...(needs.gained.length === 0 ? [] : [shown(`Can be typed now: ${names(needs.gained)}`)]),
    ...(needs.lost.length === 0 ? [] : [shown(`Can no longer be typed: ${names(needs.lost)}`)]),
    shown(
      `Relearning: ${relearning.percent.toFixed(1)} % of the presses of the text (${text}) change under the fingers` +
        `${learnt.length === 0 ? '.' : `, most of all in ${learnt.join(' ')}.`}`,
    ),
    LOAD_CAUTION,
    'Accidents are estimates from typing on conventional keyboards; public/typist.md says what is measured and what is assumed.',
  ].join('\n\n');
}

/** What became worse, or better, in a table below its heading; --json has all of it. */
function accidentLines(title: string, changes: readonly AccidentChange[]): readonly string[] {
  if (changes.length === 0) return [];
  const rows = changes
    .slice(0, NAMED)
    .map(({ who, rate, before, after }) => [who, RATES[rate], `${before.toFixed(1)} → ${after.toFixed(1)}`]);
  const more = changes.length - NAMED;
  return [[`${title}:`, plainTable(rows), ...(more > 0 ? [`and ${more} more`] : [])].join('\n')];
}

const RATES = { misfires: 'misfires per 1,000 words', misses: 'misses per 1,000 uses' } as const;

function ofAsked({ reached, asked }: TypingComparison['needs']['before']): string {
  return `${reached} of ${asked}`;
}

function both(
  { before, after }: TypingComparison['accidents'],
  field: keyof TypingComparison['accidents']['before'],
): readonly string[] {
  return [before, after].map((sum) => sum[field].toFixed(1));
}
