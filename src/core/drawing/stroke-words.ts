import type { HostLayout, Stroke } from '../host/host-layout.ts';
import { KEY_NUMBERS } from '../host/key-codes.ts';
import type { Code } from '../keymap/codes.ts';
import type { Action } from '../keymap/types.ts';

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * The strokes that the computer gets from an action, in order; empty where it sends none of its own (layers, blanks,
 * functions of the board), null where a character has no route under the host layout.
 */
export function strokesOfAction(action: Action, host: HostLayout): readonly Stroke[] | null {
  switch (action.do) {
    case 'key':
      return [{ code: action.code, with: action.with ?? [] }];
    case 'modifier':
      return [{ code: action.code, with: [] }];
    case 'char':
      return host.routesOf(action.char)[0] ?? null;
    case 'text':
      return strokesOfText(action.text, host);
    default:
      return [];
  }
}

function strokesOfText(text: string, host: HostLayout): readonly Stroke[] | null {
  const routes = [...segmenter.segment(text)].map(
    ({ segment }) => host.routesOf(segment.normalize('NFC'))[0],
  );
  return routes.some((route) => route === undefined) ? null : routes.flatMap((route) => route ?? []);
}

function joined(strokes: readonly Stroke[], spell: (code: Code) => string): string {
  return strokes.map((stroke) => [...stroke.with, stroke.code].map(spell).join('+')).join(' then ');
}

/** Strokes as W3C codes: `ShiftLeft+BracketLeft`, several joined by "then". */
export function strokeCodes(strokes: readonly Stroke[]): string {
  return joined(strokes, (code) => code);
}

/** Strokes as USB HID usages in hex, page and id in one number: `0x0700E1+0x07002F`; "none" for a key without one. */
export function strokeUsages(strokes: readonly Stroke[]): string {
  return joined(strokes, usageText);
}

function usageText(code: Code): string {
  const usage = KEY_NUMBERS[code].hidUsage;
  return usage === null ? 'none' : `0x${usage.toString(16).toUpperCase().padStart(6, '0')}`;
}
