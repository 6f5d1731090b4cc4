import { keyName } from '../board/key-name.ts';
import { codeName } from '../host/code-names.ts';
import { layerWords } from '../keymap/action-words.ts';
import { type Code, isCode } from '../keymap/codes.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import { chordName } from '../practice/fault-words.ts';
import type { BoardFault, OtherCharacter } from './board-fault.ts';
import { CHATTER_MS } from './heard.ts';
import { stateName } from './step-words.ts';

/** A fault for people: what is likely, and what to do about it. */
export interface FaultWords {
  readonly what: string;
  readonly todo: string;
}

/** What a fault's words need to know of the steps, by their ids. */
export interface StepsInWords {
  name(step: string): string;
  came(step: string): string;
}

/** Puts a fault into words. */
export function faultWords(keymap: Keymap, fault: BoardFault, steps: StepsInWords): FaultWords {
  const name = (key: KeyId) => keyName(keymap.board, key);
  switch (fault.fault) {
    case 'swapped': {
      const [one, other] = fault.keys.map(name);
      return {
        what: `${sentence(one ?? '')} and ${other} each give what the other should.`,
        todo: 'Exchange the two in the wiring or in the board’s own key order, or exchange what stands on them in the design.',
      };
    }
    case 'row-shifted':
      return {
        what: `On the ${fault.hand} hand, ${listed(fault.keys.map(name))} each give what the key ${Math.abs(fault.by) === 1 ? 'next to them' : `${Math.abs(fault.by)} places from them`} on the ${fault.by > 0 ? 'right' : 'left'} should: the row is shifted.`,
        todo: 'Look at the order of that row in the board’s own key order, or at a column wire that is off by one.',
      };
    case 'half-mirrored':
      return {
        what: `The ${fault.hand} half is mirrored: ${listed(fault.keys.map(name))} give what the key at the other end of their row should.`,
        todo: 'Turn the order of the columns of that half round in the board’s own key order; or the half was built with its other side up.',
      };
    case 'gives-another':
      return {
        what: `${sentence(name(fault.key))} gives what ${name(fault.gives)} should.`,
        todo: `Look at what is bound to ${name(fault.key)} on the board.`,
      };
    case 'layer-not-reached':
      return {
        what: `Layer ${layerWords(keymap, fault.layer)} does not come on while ${name(fault.by)} is held: ${fault.steps.length} of its keys gave what comes without it.`,
        todo: `Look at what ${name(fault.by)} does when it is held, and at its hold after.`,
      };
    case 'other-host':
      return {
        what: `The right keys came, but this computer reads them otherwise: ${listed(fault.characters.slice(0, 6).map(characterWords))}.`,
        todo: 'The board is not at fault. Set the computer to the design’s host layout, or the design to the computer’s.',
      };
    case 'chord-missed':
      return {
        what: `Chord ${chordName(keymap, fault.chord)} did not fire: its keys came by themselves, their results ${Math.round(fault.apartMs)} ms apart (window ${fault.windowMs} ms).`,
        todo: 'Press its keys closer together or widen its window; if it never fires, the board lacks the chord.',
      };
    case 'tap-for-hold':
      return {
        what: `${sentence(steps.name(fault.step))} came as a tap.`,
        todo: 'Hold it longer; if it never comes, the board’s hold after is longer than the design’s, or the hold is missing.',
      };
    case 'hold-for-tap':
      return {
        what: `${sentence(steps.name(fault.step))} came as a hold.`,
        todo: 'Tap it faster; if it always comes, the board’s hold after is shorter than the design’s.',
      };
    case 'chatters':
      return {
        what: `The switch of ${name(fault.key)} chatters: ${code(fault.code)} came again ${Math.round(fault.gapMs)} ms after its release (no finger is faster than ${CHATTER_MS} ms).`,
        todo: 'Clean or change the switch, or have the board wait a little longer until a switch has settled.',
      };
    case 'stuck':
      return {
        what: `${sentence(name(fault.key))} stays down: no release of ${code(fault.code)} came.`,
        todo: 'Look for a switch that hangs, or a short between its two wires.',
      };
    case 'modifier-down':
      return {
        what: `${fault.states.map(stateName).join(' and ')} was down for the computer ${count(fault.steps.length)}, though nothing that was asked for had pressed it.`,
        todo: 'Look for a key that hangs, on any keyboard of this computer, and for a setting of the system that keeps modifiers down; then press these again.',
      };
    case 'dead-key':
      return {
        what: `Nothing came of ${name(fault.key)}.`,
        todo: 'Look at its switch, its diode and its wires, and at whether anything is bound to it on the board.',
      };
    case 'nothing-came':
      return {
        what: `Nothing came of ${steps.name(fault.step)}.`,
        todo: 'Look at what is bound there on the board.',
      };
    case 'something-else':
      return {
        what: `Something else came of ${steps.name(fault.step)}: ${steps.came(fault.step)}.`,
        todo: 'Look at what is bound there on the board.',
      };
  }
}

/** What was found wrong by eye, for people. */
export function eyeFaultWords({
  what,
  expected,
}: {
  readonly what: string;
  readonly expected: string;
}): FaultWords {
  return {
    what: `${sentence(what)} did not do what it should, by eye: ${expected}.`,
    todo: 'Look at what is bound there on the board, and at whether the system acts on this key at all.',
  };
}

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

function characterWords({ code: from, expected, came }: OtherCharacter): string {
  return `${code(from)} gave ${came} instead of ${expected}`;
}

const count = (times: number) => (times === 1 ? 'once' : `at ${times} presses`);

function code(text: string): string {
  const known: Code | null = isCode(text) ? text : null;
  return known === null ? text : codeName(known);
}

function listed(names: readonly string[]): string {
  const [last = '', ...others] = names.toReversed();
  return others.length === 0 ? last : `${others.toReversed().join(', ')} and ${last}`;
}
