import { useEffect } from 'react';
import { useBench } from '../../store/bench.ts';
import { designs } from '../../store/keeping/use-designs.ts';
import { isTextField } from './is-text-field.ts';
import { commandOf, type ShortcutCommand } from './shortcuts.ts';

function run(command: ShortcutCommand, find: () => void): void {
  const bench = useBench.getState();
  if (command === 'undo') bench.undo();
  if (command === 'redo') bench.redo();
  if (command === 'find') find();
  if (command !== 'save') return;
  void designs.getState().flush();
  bench.notify({ tone: 'done', text: 'Every change is saved as it is made.', canUndo: false });
}

/** Whether a combination is not the page's at that place. What the browser itself would make of S is never wanted. */
function isElsewhere(command: ShortcutCommand, target: EventTarget | null): boolean {
  if (command === 'save') return false;
  const inDialog = document.querySelector('dialog[open]') !== null;
  return inDialog || (command !== 'find' && isTextField(target));
}

/**
 * Listens for the page's key combinations; a text field keeps its own undo, and a dialog is left alone. `find`
 * opens the finder, and must be the same function from one drawing to the next.
 */
export function useShortcuts(find: () => void): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      const command = commandOf(event);
      if (command === null || event.defaultPrevented) return;
      if (isElsewhere(command, event.target)) return;
      event.preventDefault();
      run(command, find);
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, [find]);
}
