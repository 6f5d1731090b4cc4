import { fail, ok, type Result } from '../../../../core/base/result.ts';
import type { Edit } from '../../../../core/keymap/edit.ts';
import { needText, parseNeed } from '../../../../core/keymap/need.ts';
import type { Keymap, Needs } from '../../../../core/keymap/types.ts';

const NONE: Needs = { lists: [], own: [], waived: [] };

/** The needs of a design; none where it says nothing. */
export function needsInForce(keymap: Keymap): Needs {
  return keymap.needs ?? NONE;
}

/** Takes a list in or out. */
export function toggleList(keymap: Keymap, name: string): Edit {
  const needs = needsInForce(keymap);
  const lists = needs.lists.includes(name)
    ? needs.lists.filter((one) => one !== name)
    : [...needs.lists, name];
  return { edit: 'set-needs', needs: { ...needs, lists } };
}

/** Adds needs of one's own, written one beside the other with spaces between; the problem names the first that is none. */
export function addOwn(keymap: Keymap, text: string): Result<Edit, string> {
  const added: string[] = [];
  for (const word of text.split(/\s+/u).filter((part) => part !== '')) {
    const whole = parseNeed(word);
    const found = whole.ok ? [needText(whole.value)] : charactersOf(word);
    if (found === null) return fail(whole.ok ? word : whole.problem);
    added.push(...found);
  }
  if (added.length === 0) return fail('Type a character, key:CODE or shortcut:Control+CODE.');
  return ok(addOwnNeeds(keymap, added));
}

/** Adds needs of one's own, each as it is written in a keymap; those that are there already stay where they are. */
export function addOwnNeeds(keymap: Keymap, added: readonly string[]): Edit {
  const needs = needsInForce(keymap);
  return { edit: 'set-needs', needs: { ...needs, own: [...new Set([...needs.own, ...added])] } };
}

/** A run of characters such as “€≥→” is several needs; anything with a colon in it was meant as one. */
function charactersOf(word: string): string[] | null {
  if (word.startsWith('key:') || word.startsWith('shortcut:')) return null;
  return [...new Intl.Segmenter('en').segment(word.normalize('NFC'))].map(({ segment }) => segment);
}

/** Takes an own need away. */
export function removeOwn(keymap: Keymap, need: string): Edit {
  const needs = needsInForce(keymap);
  return { edit: 'set-needs', needs: { ...needs, own: needs.own.filter((one) => one !== need) } };
}

/** Lets a need off, with the reason why. */
export function waive(keymap: Keymap, need: string, why: string): Edit {
  const needs = needsInForce(keymap);
  const waived = [...needs.waived.filter((one) => one.need !== need), { need, why }];
  return { edit: 'set-needs', needs: { ...needs, waived } };
}

/** Asks for a need again that had been let off. */
export function askAgain(keymap: Keymap, need: string): Edit {
  const needs = needsInForce(keymap);
  return { edit: 'set-needs', needs: { ...needs, waived: needs.waived.filter((one) => one.need !== need) } };
}
