/** What a key combination asks of the page. */
export type ShortcutCommand = 'undo' | 'redo' | 'save' | 'find';

/** The part of a keyboard event that shortcuts look at. */
export type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/**
 * The command that a combination stands for: Control or Command with Z undoes, with Shift and Z or with Y
 * redoes, with K finds, with S asks to save. `key` and not `code` is looked at, so that it holds on every host layout.
 */
export function commandOf(event: Pressed): ShortcutCommand | null {
  if (event.ctrlKey === event.metaKey || event.altKey) return null;
  const letter = event.key.toLowerCase();
  if (letter === 'z') return event.shiftKey ? 'redo' : 'undo';
  if (event.shiftKey) return null;
  if (letter === 'y') return 'redo';
  if (letter === 'k') return 'find';
  return letter === 's' ? 'save' : null;
}

/** What is shown in Help. */
export const SHORTCUTS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Ctrl or Cmd + Z', does: 'Undo the last step' },
  { keys: 'Shift + Ctrl or Cmd + Z, Ctrl + Y', does: 'Redo it' },
  {
    keys: 'Ctrl or Cmd + K',
    does: 'Find any command, desk, layer, key, finding or need; what is chosen is done or shown',
  },
  { keys: 'Arrow keys', does: 'Walk over the board, to the nearest key in that direction' },
  { keys: 'Enter', does: 'Open the card of the key; put down what is being carried' },
  { keys: 'A printing character', does: 'Binds itself to the key in focus' },
  { keys: 'Space', does: 'Select the key in focus, for a chord' },
  { keys: 'Delete', does: 'Unbind the key in focus' },
  { keys: 'Alt + Arrow up or down', does: 'Move the layer in focus up or down the stack' },
  { keys: 'Escape', does: 'Give up what is being carried; close a card or dialog' },
  { keys: 'Ctrl or Cmd + V', does: 'Import a copied keymap, outside text fields' },
];
