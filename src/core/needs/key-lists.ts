import { type NeedList, writtenNeeds } from './need-list.ts';

const functionKeys = Array.from({ length: 12 }, (_, at) => `key:F${at + 1}`);

/** Lists of single keys. What belongs in each is common practice, no source. */
export const KEY_LISTS: readonly NeedList[] = [
  {
    name: 'editing',
    title: 'Editing and navigation',
    description: 'Enter, Tab, Escape, the keys that delete and insert, the arrows, and line and page keys.',
    needs: writtenNeeds([
      ...['Enter', 'Tab', 'Escape', 'Backspace', 'Delete', 'Insert'],
      ...['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown'],
    ]),
  },
  {
    name: 'function-keys',
    title: 'Function keys',
    description: 'F1 to F12.',
    needs: writtenNeeds(functionKeys),
  },
  {
    name: 'media',
    title: 'Sound, media and brightness',
    description: 'Volume, mute, play, stop, next and previous track, and the brightness of the screen.',
    needs: writtenNeeds([
      ...['AudioVolumeMute', 'AudioVolumeDown', 'AudioVolumeUp'],
      ...['MediaPlayPause', 'MediaStop', 'MediaTrackPrevious', 'MediaTrackNext'],
      ...['BrightnessDown', 'BrightnessUp'],
    ]),
  },
  {
    name: 'modifiers',
    title: 'Modifiers of both sides',
    description: 'Control, Shift, Alt and Meta, the left and the right one of each.',
    needs: writtenNeeds([
      ...['ControlLeft', 'ControlRight', 'ShiftLeft', 'ShiftRight'],
      ...['AltLeft', 'AltRight', 'MetaLeft', 'MetaRight'],
    ]),
  },
];
