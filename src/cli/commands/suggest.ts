import { parseArgs } from 'node:util';
import { CAUTION } from '../../core/base/care.ts';
import { fail, ok, type Result } from '../../core/base/result.ts';
import { keyName } from '../../core/board/key-name.ts';
import { applyEdit } from '../../core/keymap/apply-edit.ts';
import { freshId } from '../../core/keymap/fresh-id.ts';
import { actionSchema } from '../../core/keymap/schema.ts';
import { chordsOf } from '../../core/keymap/timing.ts';
import type { Action, Chord, Keymap } from '../../core/keymap/types.ts';
import { pressRunsOf } from '../../core/typist/press-runs.ts';
import { type ChordSuggestions, suggestChords, USUAL_WISH } from '../../core/typist/suggest-chords.ts';
import { reasonsOf } from '../../core/typist/suggestion-words.ts';
import { findCounts } from '../find-counts.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';
import { personOf, wholeNumber } from '../person-of.ts';
import { plainTable, shown } from '../plain-table.ts';

/**
 * `suggest FILE --action ACTION [--keys 2-4] [--hands one|two|any] [--layers A,B] [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--window MS]
 * [--json] [--host LAYOUT]`: chords for an action, the best first; on the base layer unless layers are named. Exit code 1
 * where there is none.
 */
export function suggestCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      action: { type: 'string' },
      keys: { type: 'string', default: '2-4' },
      text: { type: 'string', default: 'english' },
      wpm: { type: 'string' },
      typist: { type: 'string' },
      hands: { type: 'string', default: USUAL_WISH.hands },
      layers: { type: 'string' },
      window: { type: 'string', default: String(USUAL_WISH.windowMs) },
      json: { type: 'boolean', default: false },
      host: { type: 'string' },
    },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return refused('suggest wants one design.');
  const keys = readKeys(values.keys);
  if (!keys.ok) return refused(keys.problem);
  const windowMs = wholeNumber('window', values.window, 1, 400);
  if (!windowMs.ok) return refused(windowMs.problem);
  const hands = HANDS.find((each) => each === values.hands);
  if (hands === undefined)
    return refused(`--hands: found ${JSON.stringify(values.hands)}, expected one, two or any.`);
  const person = personOf(values);
  if (!person.ok) return refused(person.problem);
  const counts = findCounts(values.text);
  if (!counts.ok) return refused(counts.problem);
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const { keymap, host } = design.value;
  const action = readAction(values.action, keymap);
  if (!action.ok) return refused(action.problem);
  const layers = readLayers(values.layers, keymap);
  if (!layers.ok) return refused(layers.problem);
  const wish = {
    ...USUAL_WISH,
    keys: keys.value,
    windowMs: windowMs.value,
    hands,
    layers: layers.value,
  };
  const found = suggestChords(keymap, pressRunsOf(keymap, host, counts.value), person.value, wish);
  const output = values.json
    ? JSON.stringify(plainSuggestions(keymap, action.value, windowMs.value, wish.layers, found))
    : suggestionsText(keymap, found);
  return answered(output, found.suggestions.length > 0 ? 0 : 1);
}

function readKeys(text: string): Result<readonly [number, number], string> {
  const [, first = '', last = first] = /^([2-4])(?:-([2-4]))?$/.exec(text) ?? [];
  const [least, most] = [Number(first), Number(last)];
  if (first === '' || least > most)
    return fail(`--keys: found ${JSON.stringify(text)}, expected 2-4, 3 or the like.`);
  return ok([least, most]);
}

const HANDS = ['one', 'two', 'any'] as const;

/** Layers by id or name, joined by commas; the base layer without any. */
function readLayers(text: string | undefined, keymap: Keymap): Result<readonly string[], string> {
  if (text === undefined) return ok(keymap.layers.slice(0, 1).map(({ id }) => id));
  const named = text.split(',').map((name) => name.trim());
  const layers = named.map((name) => keymap.layers.find((layer) => layer.id === name || layer.name === name));
  const unknown = named.find((_, at) => layers[at] === undefined);
  if (unknown !== undefined) {
    const known = keymap.layers.map(({ id }) => id).join(', ');
    return fail(`--layers: there is no layer ${JSON.stringify(unknown)}; there are ${known}.`);
  }
  return ok([...new Set(layers.flatMap((layer) => (layer === undefined ? [] : [layer.id])))]);
}

/** An action that the design could hold: its shape, and the layer that it may name. */
function readAction(text: string | undefined, keymap: Keymap): Result<Action, string> {
  if (text === undefined) return fail('suggest wants an --action, such as {"do":"key","code":"Tab"}.');
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return fail(
      `--action: ${JSON.stringify(text)} is not JSON; expected something like {"do":"key","code":"Tab"}.`,
    );
  }
  const read = actionSchema.safeParse(value);
  if (!read.success)
    return fail(
      `--action: ${JSON.stringify(text)} is no action; expected something like {"do":"key","code":"Tab"}.`,
    );
  const keys = keymap.board.keys.slice(0, 2).map(({ id }) => id);
  const chord: Chord = {
    id: freshId('chord', new Set(chordsOf(keymap).map(({ id }) => id))),
    keys,
    windowMs: USUAL_WISH.windowMs,
    action: read.data,
  };
  const tried = applyEdit(keymap, { edit: 'add-chord', chord });
  return tried.ok ? ok(read.data) : fail(`--action: ${tried.problem}`);
}

/** Each suggestion as the chord that it would be, with what speaks for and against it. */
function plainSuggestions(
  keymap: Keymap,
  action: Action,
  windowMs: number,
  layers: readonly string[],
  { suggestions, considered, stoppedBy }: ChordSuggestions,
): object {
  const id = freshId('chord', new Set(chordsOf(keymap).map((chord) => chord.id)));
  return {
    suggestions: suggestions.map((suggestion) => ({
      ...suggestion,
      chord: { id, keys: suggestion.keys, windowMs, layers, action },
    })),
    considered,
    stoppedBy,
  };
}

function suggestionsText(keymap: Keymap, { suggestions, considered }: ChordSuggestions): string {
  const heading = ['keys', 'misfires per 1,000 words', 'misses per 1,000 uses', 'because'];
  const rows = suggestions.map((suggestion) => [
    suggestion.keys.map((key) => keyName(keymap.board, key)).join(' + '),
    suggestion.misfiresPer1000Words.toFixed(2),
    suggestion.missesPer1000Uses.toFixed(0),
    reasonsOf(keymap, suggestion)
      .map(({ text }) => text)
      .join(', '),
  ]);
  const looked = `${considered} sets of keys looked at.`;
  return [shown(keymap.name), plainTable([heading, ...rows]), looked, CAUTION].join('\n\n');
}
