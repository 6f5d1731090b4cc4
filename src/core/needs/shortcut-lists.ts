import { type NeedList, writtenNeeds } from './need-list.ts';

/** Letters whose shortcut with the main modifier means the same in most programs. */
const LETTERS = [
  'KeyC',
  'KeyX',
  'KeyV',
  'KeyZ',
  'KeyA',
  'KeyS',
  'KeyF',
  'KeyN',
  'KeyO',
  'KeyP',
  'KeyT',
  'KeyW',
];

const withEach = (modifiers: string, codes: readonly string[]) =>
  codes.map((code) => `shortcut:${modifiers}+${code}`);

/** Shortcuts that hardly anybody gets by without. Which they are is common practice, no source. */
export const SHORTCUT_LISTS: readonly NeedList[] = [
  {
    name: 'shortcuts',
    title: 'Shortcuts on Windows and Linux',
    description:
      'Copy, paste and the like with Control, moving and deleting by words, switching windows and tabs, and Control+Alt+Delete.',
    needs: writtenNeeds([
      ...withEach('Control', [...LETTERS, 'KeyY']),
      ...withEach('Control+Shift', ['KeyZ', 'KeyV', 'KeyT', 'Tab']),
      ...withEach('Control', [
        'ArrowLeft',
        'ArrowRight',
        'Home',
        'End',
        'Backspace',
        'Delete',
        'Tab',
        'Enter',
      ]),
      ...withEach('Shift', ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'Tab']),
      ...withEach('Control+Shift', ['ArrowLeft', 'ArrowRight']),
      ...withEach('Alt', ['Tab', 'F4', 'ArrowLeft', 'ArrowRight']),
      ...withEach('Shift+Alt', ['Tab']),
      ...withEach('Meta', ['KeyL', 'KeyD', 'KeyE']),
      ...withEach('Control+Alt', ['Delete']),
    ]),
  },
  {
    name: 'shortcuts-macos',
    title: 'Shortcuts on macOS',
    description:
      'Copy, paste and the like with Meta (Command), moving and deleting by words with Alt (Option), switching programs and windows.',
    needs: writtenNeeds([
      ...withEach('Meta', [...LETTERS, 'KeyQ', 'KeyH', 'KeyM', 'Comma']),
      ...withEach('Shift+Meta', ['KeyZ', 'KeyT', 'Digit4', 'Tab']),
      ...withEach('Meta', ['Tab', 'Backquote', 'Space']),
      ...withEach('Meta', ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Backspace']),
      ...withEach('Alt', ['ArrowLeft', 'ArrowRight', 'Backspace']),
      ...withEach('Shift', ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Tab']),
      ...withEach('Shift+Alt', ['ArrowLeft', 'ArrowRight']),
      ...withEach('Control', ['Tab', 'ArrowLeft', 'ArrowRight', 'ArrowUp']),
      ...withEach('Control+Meta', ['KeyQ']),
      ...withEach('Alt+Meta', ['Escape']),
    ]),
  },
];
