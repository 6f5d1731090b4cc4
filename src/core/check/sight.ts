import { SEEN, strokeSight } from '../host/stroke-sight.ts';
import type { Action } from '../keymap/types.ts';
import type { ExpectedStroke } from './expected.ts';

/**
 * Whether a browser can see that a press did its work: `seen`; `seen-when-locked`, in full screen with the Keyboard Lock
 * API only; `by-eye`, never; `by-its-effect`, since it sends nothing and shows in what comes after it.
 */
export type SightKind = 'seen' | 'seen-when-locked' | 'by-eye' | 'by-its-effect';

export interface Sight {
  readonly kind: SightKind;
  /** Why, as a sentence; empty for what is seen. */
  readonly why: string;
}

/** How a press with these strokes can be checked from a page. */
export function sightOf(action: Action, strokes: readonly ExpectedStroke[]): Sight {
  if (action.do === 'board') {
    return { kind: 'by-eye', why: 'The board does it by itself: no computer hears of it.' };
  }
  if (strokes.length === 0) return effectOf(action);
  const sights = strokes.map((stroke) => strokeSight(stroke));
  const worst = (['by-eye', 'seen-when-locked'] as const).map((kind) =>
    sights.find((sight) => sight.kind === kind),
  );
  return worst.find((sight) => sight !== undefined) ?? SEEN;
}

function effectOf(action: Action): Sight {
  const kind = 'by-its-effect';
  switch (action.do) {
    case 'layer':
      return {
        kind,
        why: 'A layer key sends nothing: that the keys of its layer come right shows that it works.',
      };
    case 'modifier':
      return { kind, why: 'A latch or lock sends nothing until another key is pressed.' };
    case 'word-shift':
      return { kind, why: 'Shift for one word sends nothing until a letter is pressed.' };
    case 'repeat':
      return { kind, why: 'It repeats what came before it, and nothing did.' };
    case 'nothing':
      return { kind, why: 'It is to send nothing.' };
    default:
      return { kind, why: 'The computer has no way to type it, so nothing is sent.' };
  }
}
