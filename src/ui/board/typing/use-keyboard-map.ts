import { useEffect, useState } from 'react';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { hostsThatFitMap } from '../../../core/host/tell-apart.ts';
import { keyboardMap } from './keyboard-map.ts';

/** What the browser says of the keyboard at hand: null where it cannot say, undefined while it is asked. Asked again when somebody comes back. */
export function useKeyboardMap(): ReadonlyMap<string, string> | null | undefined {
  const [map, setMap] = useState<ReadonlyMap<string, string> | null | undefined>(undefined);
  useEffect(() => {
    let isOver = false;
    const ask = () =>
      void keyboardMap(navigator).then((found) => {
        if (!isOver) setMap((before) => (isSameMap(before, found) ? before : found));
      });
    ask();
    window.addEventListener('focus', ask);
    return () => {
      isOver = true;
      window.removeEventListener('focus', ask);
    };
  }, []);
  return map;
}

type MaybeMap = ReadonlyMap<string, string> | null | undefined;

function isSameMap(one: MaybeMap, other: MaybeMap): boolean {
  if (one === other) return true;
  if (one == null || other == null || one.size !== other.size) return false;
  return [...one].every(([code, char]) => other.get(code) === char);
}

/** Whether this computer is on a layout, as far as keys without modifiers tell; null where nobody knows. */
export function fitsMap(map: ReadonlyMap<string, string> | null, host: HostLayout): boolean | null {
  return map === null ? null : hostsThatFitMap([host], map).length > 0;
}
