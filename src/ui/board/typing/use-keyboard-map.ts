import { useEffect, useState } from 'react';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { hostsThatFitMap } from '../../../core/host/tell-apart.ts';
import { keyboardMap } from './keyboard-map.ts';

/** What the browser says of the keyboard at hand: null while it is asked, and where it cannot say. */
export function useKeyboardMap(): ReadonlyMap<string, string> | null {
  const [map, setMap] = useState<ReadonlyMap<string, string> | null>(null);
  useEffect(() => {
    let isOver = false;
    void keyboardMap(navigator).then((found) => {
      if (!isOver) setMap(found);
    });
    return () => {
      isOver = true;
    };
  }, []);
  return map;
}

/** Whether this computer is on a layout, as far as keys without modifiers tell; null where nobody knows. */
export function fitsMap(map: ReadonlyMap<string, string> | null, host: HostLayout): boolean | null {
  return map === null ? null : hostsThatFitMap([host], map).length > 0;
}
