import { keyName } from '../../../core/board/key-name.ts';
import type { Overlay } from '../../../core/board/overlay.ts';
import { codeLabel } from '../../../core/host/code-names.ts';
import { isCode } from '../../../core/keymap/codes.ts';
import type { Board, KeyId } from '../../../core/keymap/types.ts';
import type { KeyHeat } from '../../../core/practice/heat.ts';
import { count } from './practise-words.ts';

/** What stands on a key in place of its legend: how strongly it is filled, 0 to 4, a figure, and the same in words. */
export interface KeyFigure {
  readonly step: number;
  readonly figure: string;
  readonly words: string;
}

export type HeatOf = 'errors' | 'speed';

/** Where one step of the filling ends and the next begins: share of wrong tries; ms. Our own choice. */
const ENDS: Readonly<Record<HeatOf, readonly number[]>> = {
  errors: [0.02, 0.05, 0.1, 0.2],
  speed: [250, 400, 600, 1000],
};

/** How it goes, on each key that has been practised. */
export function heatFigures(
  board: Board,
  heat: ReadonlyMap<KeyId, KeyHeat>,
  of: HeatOf,
): ReadonlyMap<KeyId, KeyFigure> {
  const marks = new Map<KeyId, KeyFigure>();
  for (const [key, { tries, errorShare, medianMs }] of heat) {
    const value = of === 'errors' ? errorShare : medianMs;
    if (value === null) continue;
    const figure = of === 'errors' ? `${Math.round(value * 100)} %` : String(Math.round(value));
    const what = of === 'errors' ? `${figure} wrong` : `median ${figure} ms`;
    const words = `${keyName(board, key)}: ${what}, ${count(tries, 'try', 'tries')}`;
    marks.set(key, { step: stepOf(value, ENDS[of]), figure, words });
  }
  return marks;
}

function stepOf(value: number, ends: readonly number[]): number {
  return ends.filter((end) => value > end).length;
}

/** What the filling means, in a line. */
export function heatLegend(of: HeatOf): string {
  return of === 'errors'
    ? 'Share of last tries that were wrong at first; the fuller, the more: over 2, 5, 10, 20 %.'
    : 'Median of last times, ms; the fuller, the slower: over 250, 400, 600, 1,000 ms.';
}

/** Which key of the keyboard at hand stands for each key of the board. */
export function overlayFigures(board: Board, overlay: Overlay): ReadonlyMap<KeyId, KeyFigure> {
  const figures = new Map<KeyId, KeyFigure>();
  for (const [code, key] of Object.entries(overlay.keys)) {
    if (!isCode(code)) continue;
    const figure = codeLabel(code);
    figures.set(key, { step: 0, figure, words: `${keyName(board, key)}: ${figure}` });
  }
  return figures;
}
