import { FRAGMENT_SIGNS } from '../../../core/link/fragment.ts';

/** How long a link is, and what to mind where it is long. `signs`: of the whole address. */
export function linkLengthWords(signs: number): string {
  const length = `${(signs / 1024).toFixed(1)} kB`;
  return signs <= FRAGMENT_SIGNS.short ? length : `${length}, which some programs cut off: try it first`;
}

/** What is said once a link is on the clipboard. */
export function copiedLinkWords(signs: number): string {
  return `Copied a link that holds the whole design (${linkLengthWords(signs)}). Nothing was sent: it is all in the address.`;
}

/** What is said of a design that came with the address. */
export function openedLinkWords(name: string, how: 'added' | 'kept before'): string {
  return how === 'added'
    ? `Opened “${name}” from the link. It is kept beside your own designs, which are as they were.`
    : `The link holds “${name}” just as you keep it already. It is open now.`;
}
