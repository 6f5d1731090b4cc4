import { describe, expect, test } from 'vitest';
import { type Recording, recordedAfter, WAITING } from '../../../../src/ui/board/cards/recording.ts';

/** `KeyA↓ KeyA↑`; a repeated press is written `KeyA⇊`. */
function record(events: string): Recording {
  return events.split(' ').reduce((recording, event) => {
    const sign = event.at(-1);
    const type = sign === '↑' ? ('up' as const) : ('down' as const);
    return recordedAfter(recording, { type, code: event.slice(0, -1), repeat: sign === '⇊' });
  }, WAITING);
}

describe('recording the next key', () => {
  test.each([
    ['KeyA↓', { state: 'done', code: 'KeyA' }],
    ['Escape↓', { state: 'done', code: 'Escape' }],
    ['ShiftLeft↓', { state: 'done', code: 'ShiftLeft' }],
    ['ControlLeft↓', { state: 'control' }],
    ['ControlLeft↓ ControlLeft↑', { state: 'done', code: 'ControlLeft' }],
    ['ControlLeft↓ AltRight↓', { state: 'done', code: 'AltRight' }],
    ['ControlLeft↓ KeyC↓', { state: 'done', code: 'ControlLeft' }],
    ['Enter↑ F5↓', { state: 'done', code: 'F5' }],
    ['Enter⇊ F5↓', { state: 'done', code: 'F5' }],
    ['KeyA↓ KeyB↓', { state: 'done', code: 'KeyA' }],
    ['Unidentified↓', { state: 'unknown', code: 'Unidentified' }],
    ['Unidentified↓ Tab↓', { state: 'done', code: 'Tab' }],
    ['↓', { state: 'unknown', code: '' }],
  ])('%s', (events, recording) => {
    expect(record(events)).toEqual(recording);
  });
});
