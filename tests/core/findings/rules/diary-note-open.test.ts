import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../../src/core/findings/facts.ts';
import { findingId } from '../../../../src/core/findings/finding-id.ts';
import { diaryNoteOpen } from '../../../../src/core/findings/rules/diary-note-open.ts';
import { usHost } from '../../../../src/core/host/us.ts';
import { applyEdit } from '../../../../src/core/keymap/apply-edit.ts';
import type { DiaryNote, Keymap } from '../../../../src/core/keymap/types.ts';
import { chord, design } from '../design.ts';

const note = (id: string, more: Partial<DiaryNote> = {}): DiaryNote => ({
  id,
  text: 'too far',
  writtenAt: '2026-05-04T18:30:00Z',
  state: 'abc',
  tickedOff: false,
  ...more,
});

const withDiary = (...diary: readonly DiaryNote[]): Keymap => ({
  ...design({ layers: { base: 'a b c d e f g h i j' }, chords: [chord('tab', 'L1 L2', 45, 'Tab')] }),
  diary,
});

const findings = (keymap: Keymap) => diaryNoteOpen.check(factsOf(keymap, usHost));

describe('diary-note-open', () => {
  it.each<[string, Partial<DiaryNote>, object]>([
    ['the design', {}, { keys: [], layers: [], chords: [] }],
    ['keys', { keys: ['L1', 'R2'] }, { keys: ['L1', 'R2'], layers: [], chords: [] }],
    ['a layer', { layer: 'base' }, { keys: [], layers: ['base'], chords: [] }],
    ['a chord', { chord: 'tab' }, { keys: [], layers: [], chords: ['tab'] }],
    ['a key that is gone', { keys: ['L1', 'X9'] }, { keys: ['L1'], layers: [], chords: [] }],
    ['a chord that is gone', { chord: 'none' }, { keys: [], layers: [], chords: [] }],
  ])('says so of an open note about %s', (_, pins, subjects) => {
    expect(findings(withDiary(note('note1', pins)))).toMatchObject([
      { severity: 'note', subjects, data: { note: 'note1' } },
    ]);
  });

  it('keeps quiet about a note that is ticked off, and where there is no diary', () => {
    expect(findings(withDiary(note('note1', { tickedOff: true })))).toEqual([]);
    expect(findings(design({ layers: { base: 'a b c d e f g h i j' } }))).toEqual([]);
  });

  it('tells two notes about the same key apart, and ticks off the one it is about', () => {
    const keymap = withDiary(note('note1', { keys: ['L1'] }), note('note2', { keys: ['L1'] }));
    const [first, second] = findings(keymap);
    if (first === undefined || second === undefined) throw new Error('two notes, two findings');
    expect(findingId(first)).not.toBe(findingId(second));
    const [edit] = second.mends[0]?.edits ?? [];
    if (edit === undefined) throw new Error('no mend');
    const mended = applyEdit(keymap, edit);
    expect(mended.ok && findings(mended.value.keymap).map(({ data }) => data.note)).toEqual(['note1']);
  });
});
