import { listed } from '../../../../core/rehearse/key-words.ts';
import type { Who } from './writer.ts';

/** What is written before anybody has written anything: a scenario of the project's own. */
export const SAMPLE_TEXT =
  'The tide gauge reads low again. The keeper writes it down before the evening boat.';

/** How far apart the keys of a chord come; wider hands are an assumption and say so. */
export const SPREADS = [
  { value: '1', label: 'skilled' },
  { value: '1.5', label: 'new to them (assumed 1.5 × as wide)' },
  { value: '2', label: 'very new (assumed 2 × as wide)' },
] as const;

/** Who may write; the measured one's words a minute where they are known here. */
export function writerOptions(
  measuredWpm: number | null,
): readonly { readonly value: Who; readonly label: string }[] {
  const speed = measuredWpm === null ? '' : `, ${Math.round(measuredWpm)} wpm`;
  return [
    { value: 'measured', label: `as I was measured${speed}` },
    { value: 'speed', label: 'somebody of a chosen speed' },
  ];
}

/** What the number that a stream is drawn with is good for. */
export function takeWords(who: Who, seed: number): string {
  return `${who === 'measured' ? 'Take' : 'Typist'} ${seed}: the same number types the same way again.`;
}

/** What of a text this design cannot type. */
export function missingWords(missing: readonly string[]): string {
  const shown = missing.slice(0, 12).map((char) => (char === ' ' ? 'Space' : char));
  const more = missing.length > shown.length ? ' and others' : '';
  return `This design has no way to type ${listed(shown)}${more}: left out.`;
}

/** What there is to know before keys are typed: those that the browser or the window system takes for itself. */
export function takenKeys(codes: readonly string[], locked: boolean): readonly string[] {
  const has = (pattern: RegExp) => codes.some((code) => pattern.test(code));
  const said: string[] = [];
  if (has(/^Meta/) && !locked)
    said.push('The Meta key opens a menu of the window system; in full screen some browsers hold it back.');
  if (has(/^Alt/) && !locked)
    said.push(
      'Alt moves to the menu in some browsers, and with Tab to another window; full screen may hold it back.',
    );
  if (has(/^Control/) && !locked)
    said.push(
      'Control with W, N or T belongs to the browser: it would close or open a page (it asks first).',
    );
  if (has(/^F\d/) && !locked)
    said.push('F11 leaves full screen, and some F keys belong to the window system.');
  if (has(/^CapsLock$/)) said.push('Caps Lock sends its release late, or none, on some systems.');
  if (has(/^ContextMenu$/)) said.push('The Menu key may open a menu.');
  return said;
}
