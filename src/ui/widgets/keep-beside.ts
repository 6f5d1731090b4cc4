import type { BoxSize, Corner } from './beside-of.ts';

/**
 * Keeps a sheet where `corner` says, px in the window, whatever grows or scrolls; null leaves it where it is. Gives back
 * what ends it.
 */
export function keepBeside(
  sheet: HTMLElement,
  corner: (sheet: BoxSize, win: BoxSize) => Corner | null,
): () => void {
  const place = () => {
    const at = corner(
      { width: sheet.offsetWidth, height: sheet.offsetHeight },
      { width: window.innerWidth, height: window.innerHeight },
    );
    if (at === null) return;
    sheet.style.left = `${at.left}px`;
    sheet.style.top = `${at.top}px`;
  };
  place();
  const watch = new ResizeObserver(place);
  watch.observe(sheet);
  window.addEventListener('resize', place);
  window.addEventListener('scroll', place, true);
  return () => {
    watch.disconnect();
    window.removeEventListener('resize', place);
    window.removeEventListener('scroll', place, true);
  };
}
