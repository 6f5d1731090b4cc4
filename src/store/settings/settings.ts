import type { Paper } from '../../core/board/paper.ts';
import type { InkChoice, Turn } from '../../core/drawing/sheet-paper.ts';

/** What a person has settled for themselves; kept with the browser and no part of any design. */
export interface Settings {
  /** Light or dark; `system` follows the computer. */
  readonly theme: 'system' | 'light' | 'dark';
  /** Movements of the page; `system` follows the computer. */
  readonly motion: 'system' | 'less';
  /** What lengths are told in; durations are in ms always. */
  readonly units: 'mm' | 'inch';
  /** Legends by the characters that the computer makes of the keys, or by the names of the keys themselves. */
  readonly legends: 'characters' | 'codes';
  /** Rungs that are left out of the ladders, by the number of their layer. */
  readonly hiddenRungs: readonly number[];
  readonly paper: Paper['id'];
  readonly turn: Turn;
  readonly ink: InkChoice;
}

/** What holds until something is settled. */
export const DEFAULT_SETTINGS: Settings = {
  theme: 'system',
  motion: 'system',
  units: 'mm',
  legends: 'characters',
  hiddenRungs: [],
  paper: 'a4',
  turn: 'landscape',
  ink: 'colour',
};

const WORDS: { readonly [Name in Exclude<keyof Settings, 'hiddenRungs'>]: readonly Settings[Name][] } = {
  theme: ['system', 'light', 'dark'],
  motion: ['system', 'less'],
  units: ['mm', 'inch'],
  legends: ['characters', 'codes'],
  paper: ['a4', 'letter'],
  turn: ['portrait', 'landscape'],
  ink: ['colour', 'black'],
};

/**
 * Settings from a kept text: each as far as it makes sense, the default for the rest. `keptTheme` is the theme as it was
 * kept before there were other settings, `localPaper` the paper of the place, which holds until one is settled.
 */
export function readSettings(
  kept: string | null,
  keptTheme: string | null = null,
  localPaper = DEFAULT_SETTINGS.paper,
): Settings {
  const found = { theme: keptTheme, paper: localPaper, ...objectOf(kept) };
  return {
    theme: oneOf('theme', found),
    motion: oneOf('motion', found),
    units: oneOf('units', found),
    legends: oneOf('legends', found),
    hiddenRungs: rungsOf(found),
    paper: oneOf('paper', found),
    turn: oneOf('turn', found),
    ink: oneOf('ink', found),
  };
}

type Found = Readonly<Record<string, unknown>>;

function objectOf(text: string | null): Found {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

function oneOf<Name extends keyof typeof WORDS>(name: Name, found: Found): Settings[Name] {
  const words: readonly Settings[Name][] = WORDS[name];
  return words.find((word) => word === found[name]) ?? DEFAULT_SETTINGS[name];
}

function rungsOf({ hiddenRungs }: Found): readonly number[] {
  if (!Array.isArray(hiddenRungs)) return [];
  return hiddenRungs.filter((rung: unknown): rung is number => Number.isInteger(rung));
}
