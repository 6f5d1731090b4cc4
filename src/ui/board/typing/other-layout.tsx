import type { HostLayout } from '../../../core/host/host-layout.ts';
import { fitsMap, useKeyboardMap } from './use-keyboard-map.ts';

/** Says, before anything is typed, that this computer reads keys otherwise than the design's host layout; nothing where it does not. */
export function OtherLayout({ host, title }: { readonly host: HostLayout; readonly title: string }) {
  const map = useKeyboardMap();
  if (fitsMap(map, host) !== false) return null;
  return (
    <p role="alert">
      The browser says that this computer is not on {title}, which the design is for: characters will come
      otherwise. Set the computer to that layout, or change the design’s host.
    </p>
  );
}
