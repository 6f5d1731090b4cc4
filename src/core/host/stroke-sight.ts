import type { Code, Modifier } from '../keymap/codes.ts';
import type { Stroke } from './host-layout.ts';

/** Whether a page hears of a stroke: always, in full screen with the Keyboard Lock API only, or not at all. */
export interface StrokeSight {
  readonly kind: 'seen' | 'seen-when-locked' | 'by-eye';
  /** Why, as a sentence; empty for what is seen. */
  readonly why: string;
}

export const SEEN: StrokeSight = { kind: 'seen', why: '' };

/** Keys that the system, or the hardware below it, keeps (common practice, no source). */
const KEPT_BY_SYSTEM = /^(Power|Sleep|WakeUp|Eject|Fn|FnLock|Brightness|PrintScreen)/;

/** Keys that systems and browsers often act on without telling the page (common practice, no source). */
const OFTEN_KEPT = /^(Audio|Media|Launch|Browser|Select|Mail|Display|Keyboard)/;

const isControlOrMeta = (modifier: Modifier) => /^(Control|Meta)/.test(modifier);

/** How a page hears of one stroke. */
export function strokeSight({ code, with: modifiers }: Stroke): StrokeSight {
  if (KEPT_BY_SYSTEM.test(code)) {
    return { kind: 'by-eye', why: 'The system keeps this key for itself, so no page hears of it.' };
  }
  if (OFTEN_KEPT.test(code)) {
    return { kind: 'by-eye', why: 'Systems often act on this key themselves, and then no page hears of it.' };
  }
  if (isAttention(code, modifiers)) {
    return { kind: 'by-eye', why: 'The system keeps this shortcut for itself, whatever runs.' };
  }
  return takenByWindow(code, modifiers)
    ? {
        kind: 'seen-when-locked',
        why: 'The browser or the window system takes this shortcut first, but for a page in full screen that may lock the keyboard.',
      }
    : SEEN;
}

/** Control + Alt + Delete, Meta + L and the like: kept from every program (common practice, no source). */
function isAttention(code: Code, modifiers: readonly Modifier[]): boolean {
  const has = (name: string) => modifiers.some((modifier) => modifier.startsWith(name));
  if (code === 'Delete' && has('Control') && has('Alt')) return true;
  return code === 'KeyL' && has('Meta') && !has('Control');
}

const TAKEN_WITH_COMMAND: ReadonlySet<Code> = new Set([
  'KeyT',
  'KeyN',
  'KeyW',
  'KeyQ',
  'Tab',
  'PageUp',
  'PageDown',
]);
const TAKEN_WITH_ALT: ReadonlySet<Code> = new Set(['Tab', 'F4', 'Space', 'Escape']);

/**
 * What a page cannot prevent outside full screen: new, closed and other tabs and windows, the window menu, whatever is
 * held with Meta, and Meta itself. Escape leaves full screen by itself. (Keyboard Lock, a draft of the Web Incubator
 * Community Group, names Escape, Alt + Tab and Meta as what it is there for; the rest is common practice, no source.)
 */
function takenByWindow(code: Code, modifiers: readonly Modifier[]): boolean {
  if (/^Meta/.test(code)) return true;
  if (modifiers.some((modifier) => /^Meta/.test(modifier))) return true;
  if (modifiers.some(isControlOrMeta) && TAKEN_WITH_COMMAND.has(code)) return true;
  return modifiers.some((modifier) => /^Alt/.test(modifier)) && TAKEN_WITH_ALT.has(code);
}
