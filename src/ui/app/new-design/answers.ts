import type { Arrangement } from '../../../core/board/arrangements.ts';
import { parametricBoard } from '../../../core/board/parametric.ts';
import { atPitch, PITCHES } from '../../../core/board/pitches.ts';
import { READY_BOARDS } from '../../../core/board/ready-boards.ts';
import type { Board, Host } from '../../../core/keymap/types.ts';
import type { StarterChoices } from '../../../store/starter-design.ts';

type HostName = Pick<Host, 'layout' | 'variant'>;

/** The three answers as they stand in the dialog. */
export interface Answers {
  readonly name: string;
  readonly board: string;
  readonly pitch: string;
  readonly system: Host['system'];
  readonly host: HostName;
  readonly arrangement: Arrangement['id'];
  readonly lists: readonly string[];
  /** Characters beyond the lists, as they were typed. */
  readonly others: string;
}

export const SYSTEMS: readonly { readonly value: Host['system']; readonly label: string }[] = [
  { value: 'linux', label: 'Linux' },
  { value: 'windows', label: 'Windows' },
  { value: 'macos', label: 'macOS' },
];

/** The system that a browser says it runs on; Linux where it says nothing known. */
export function systemOf(userAgent: string): Host['system'] {
  if (/Mac OS X|Macintosh/.test(userAgent)) return 'macos';
  return /Windows/.test(userAgent) ? 'windows' : 'linux';
}

/** What the dialog opens with. */
export function firstAnswers(system: Host['system']): Answers {
  return {
    name: 'New design',
    board: 'split-36',
    pitch: 'full',
    system,
    host: { layout: 'us', variant: '' },
    arrangement: 'qwerty',
    lists: ['ascii', 'editing', 'modifiers', shortcutsOf(system)],
    others: '',
  };
}

function shortcutsOf(system: Host['system']): string {
  return system === 'macos' ? 'shortcuts-macos' : 'shortcuts';
}

/** Another system: the list of shortcuts goes along, if one was chosen. */
export function withSystem(answers: Answers, system: Host['system']): Answers {
  const before = shortcutsOf(answers.system);
  const lists = answers.lists.map((list) => (list === before ? shortcutsOf(system) : list));
  return { ...answers, system, lists: [...new Set(lists)] };
}

/** Another host layout: the letters start as on keyboards that are sold with it. */
export function withHost(answers: Answers, { layout, variant }: HostName): Answers {
  return { ...answers, host: { layout, variant }, arrangement: arrangementOf({ layout, variant }) };
}

/** Layouts by their letter rows, as XKB's tables have them. */
const QWERTZ = new Set(['de', 'at', 'ch', 'hu', 'sk', 'hr']);
const AZERTY = new Set(['fr', 'be']);

function arrangementOf({ layout, variant }: HostName): Arrangement['id'] {
  if (variant === 'dvorak') return 'dvorak';
  if (AZERTY.has(layout)) return 'azerty';
  return QWERTZ.has(layout) ? 'qwertz' : 'qwerty';
}

/** One word for a host layout, to tell it from others in a list. */
export function hostKey({ layout, variant }: HostName): string {
  return variant === '' ? layout : `${layout} ${variant}`;
}

/** A ready board at a pitch; the first of each where the id is not known. */
export function boardOf(boardId: string, pitchId: string): Board {
  const ready = READY_BOARDS.find(({ id }) => id === boardId) ?? READY_BOARDS[0];
  const pitch = PITCHES.find(({ id }) => id === pitchId) ?? PITCHES[0];
  if (ready === undefined || pitch === undefined) throw new Error('There is no ready board.');
  return parametricBoard(atPitch(ready.madeFrom, pitch), ready.title);
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The characters of a text, each once, in its order; spaces only set them apart. */
export function charactersOf(text: string): readonly string[] {
  const all = [...graphemes.segment(text.normalize('NFC'))].map(({ segment }) => segment);
  return [...new Set(all.filter((char) => char.trim() !== ''))];
}

/** What a design is made from, out of the answers. */
export function choicesOf(answers: Answers): StarterChoices {
  return {
    name: answers.name.trim(),
    board: boardOf(answers.board, answers.pitch),
    host: { system: answers.system, ...answers.host },
    needs: { lists: answers.lists, own: charactersOf(answers.others), waived: [] },
    arrangement: answers.arrangement,
  };
}
