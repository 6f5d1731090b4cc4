import { useEffect } from 'react';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';

/**
 * While the board is worked on, undo and redo are its own: a step of the design that it does not show would go unseen.
 * A text field keeps its own, and so does a dialog.
 */
export function useDraftUndo(): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.ctrlKey === event.metaKey || event.altKey || event.defaultPrevented) return;
      if (document.querySelector('dialog[open]') !== null || isText(event.target)) return;
      const letter = event.key.toLowerCase();
      const { undo, redo } = useBoardDrafts.getState();
      if (letter === 'z' && !event.shiftKey) undo();
      else if (letter === 'y' || letter === 'z') redo();
      else return;
      event.preventDefault();
      event.stopPropagation();
    };
    document.addEventListener('keydown', pressed, true);
    return () => document.removeEventListener('keydown', pressed, true);
  }, []);
}

function isText(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLInputElement &&
    ['text', 'search'].includes(target.type) &&
    target.role !== 'spinbutton'
  );
}
