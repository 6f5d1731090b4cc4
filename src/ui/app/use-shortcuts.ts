import { useEffect } from 'react';
import { useBench } from '../../store/bench.ts';
import { designs } from '../../store/keeping/use-designs.ts';
import { isTextField } from './is-text-field.ts';
import { commandOf, type ShortcutCommand } from './shortcuts.ts';

function run(command: ShortcutCommand): void {
  const bench = useBench.getState();
  if (command === 'undo') bench.undo();
  if (command === 'redo') bench.redo();
  if (command !== 'save') return;
  void designs.getState().flush();
  bench.notify({ tone: 'done', text: 'Every change is saved as it is made.', canUndo: false });
}

/** Listens for the page's key combinations; a text field keeps its own undo, and a dialog is left alone. */
export function useShortcuts(): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      const command = commandOf(event);
      if (command === null || event.defaultPrevented) return;
      const elsewhere = isTextField(event.target) || document.querySelector('dialog[open]') !== null;
      if (elsewhere && command !== 'save') return;
      event.preventDefault();
      run(command);
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, []);
}
