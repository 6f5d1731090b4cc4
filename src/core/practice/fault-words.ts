import { keyName } from '../board/key-name.ts';
import { layerWords } from '../keymap/action-words.ts';
import { chordById } from '../keymap/lookup.ts';
import type { ChordId, KeyId, Keymap } from '../keymap/types.ts';
import type { Diagnosis, Fault } from './fault.ts';

/** A diagnosis in sentences, the first explaining most; "Likely:" before each where only results were seen. */
export function diagnosisWords(keymap: Keymap, { sure, faults }: Diagnosis): readonly string[] {
  const words = faults.map((fault) => faultWords(keymap, fault));
  return sure ? words : words.map((text) => `Likely: ${text[0]?.toLowerCase() ?? ''}${text.slice(1)}`);
}

/** One fault in a sentence, with its numbers. */
export function faultWords(keymap: Keymap, fault: Fault): string {
  const key = (id: KeyId) => keyName(keymap.board, id);
  switch (fault.fault) {
    case 'chord-missed':
      return missedWords(keymap, fault);
    case 'chord-incomplete':
      return `Chord ${chordName(keymap, fault.chord)} incomplete: ${fault.missing.map(key).join(' and ')} did not come.`;
    case 'chord-by-mistake':
      return `Chord ${chordName(keymap, fault.chord)} fired and was not meant${apartWords(fault)}.`;
    case 'tap-for-hold':
      return `Came as a tap: ${key(fault.key)}${heldWords(fault)}.${tapReason(fault.rule)}`;
    case 'hold-for-tap':
      return `Came as a hold: ${key(fault.key)}${heldWords(fault)}.`;
    case 'wrong-layer':
      return layerFaultWords(keymap, fault);
    case 'modifier-missing':
      return `${fault.modifier} was not down.`;
    case 'modifier-extra':
      return `${fault.modifier} was down and should not have been.`;
    case 'came-early':
      return 'The next one came too early.';
    case 'old-place':
      return `Its old place: it moved from ${key(fault.key)} to ${key(fault.meant)}.`;
    case 'mirrored-hand':
      return `Mirrored hand: ${key(fault.key)} instead of ${key(fault.meant)}.`;
    case 'neighbour':
      return `Neighbour: ${key(fault.key)} instead of ${key(fault.meant)}.`;
    case 'other-key':
      return `Another key: ${key(fault.key)} instead of ${key(fault.meant)}.`;
    case 'nothing-there':
      return `Nothing is bound there: ${key(fault.key)}.`;
    case 'unknown':
      return 'Something else came than was asked for.';
  }
}

/** A chord by its name, else by its id. */
export function chordName(keymap: Keymap, id: ChordId): string {
  return chordById(keymap, id)?.name ?? id;
}

const ms = (value: number) => `${Math.round(value * 10) / 10} ms`;

function missedWords(keymap: Keymap, fault: Extract<Fault, { fault: 'chord-missed' }>): string {
  const { apartMs, windowMs, broken } = fault;
  const name = `Chord ${chordName(keymap, fault.chord)} missed`;
  if (apartMs === null) return `${name}: its keys came one by one, window ${ms(windowMs)}.`;
  const numbers = `${name}: ${ms(apartMs)} apart, window ${windowMs}`;
  if (broken === 'other-key') return `${numbers}; another key came between.`;
  if (broken === 'too-short') return `${numbers}; a key came up before all were down.`;
  if (broken === 'not-quiet') return `${numbers}; it came too soon after the press before it.`;
  return `${numbers}.`;
}

function apartWords({ apartMs, windowMs }: { apartMs: number | null; windowMs: number }): string {
  return apartMs === null ? '' : `: ${ms(apartMs)} apart, window ${windowMs}`;
}

function heldWords({ heldMs, holdAfterMs }: { heldMs: number | null; holdAfterMs: number }): string {
  return heldMs === null
    ? `, a hold after ${holdAfterMs} ms`
    : `, held ${ms(heldMs)}, a hold after ${holdAfterMs}`;
}

/** Why a key that was held long enough was still a tap. */
function tapReason(rule: string | null): string {
  if (rule === 'S10') return ' It came right after another press.';
  if (rule === 'S11') return ' It came right after its own tap.';
  return rule === 'S4' ? ' A key of the same hand followed.' : '';
}

function layerFaultWords(keymap: Keymap, fault: Extract<Fault, { fault: 'wrong-layer' }>): string {
  const start = fault.rightKey ? 'Right key, wrong layer' : 'Wrong layer';
  return `${start}: ${layerWords(keymap, fault.on)} instead of ${layerWords(keymap, fault.needed)}.`;
}
