import { describe, expect, test } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import { checkKeymap, readKeymap } from '../../../src/core/keymap/read.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { small } from './small.ts';

const host = { system: 'macos', layout: 'us', variant: 'mac' } as const;
const corrected = (...corrections: object[]) => ({ ...small(), hosts: [{ ...host, corrections }] });
const correction = (more: object = {}) => ({ code: 'KeyE', level: 'level3', gives: 'é', ...more });

describe('corrections of a host', () => {
  test.each([
    ['a character', 'é'],
    ['a cluster of several code points', '👩‍🚀'],
    ['a space', ' '],
    ['a dead key', 'dead_acute'],
    ['nothing', ''],
  ])('may give %s', (_, gives) => {
    expect(checkKeymap(corrected(correction({ gives })))).toMatchObject({
      ok: true,
      value: { hosts: [{ corrections: [{ code: 'KeyE', level: 'level3', gives }] }] },
    });
  });

  test('one key may be corrected at each of its four levels', () => {
    const levels = ['plain', 'shift', 'level3', 'shift-level3'].map((level) => correction({ level }));
    expect(checkKeymap(corrected(...levels)).ok).toBe(true);
  });

  test('what they give is kept in NFC, by reading and by edits', () => {
    const decomposed = { ...host, corrections: [correction({ gives: 'e\u0301' })] };
    const read = checkKeymap({ ...small(), hosts: [decomposed] });
    expect(read.ok && read.value.hosts[0]?.corrections?.[0]?.gives).toBe('é');
    const change = { code: 'KeyE', level: 'plain', gives: 'e\u0301' } as const;
    const edited = applyEdit(small(), {
      edit: 'set-hosts',
      hosts: [{ ...host, corrections: [change] }],
    });
    expect(edited.ok && edited.value.keymap.hosts[0]?.corrections).toEqual([{ ...change, gives: 'é' }]);
  });

  test('they are written on the line of their host, which stays as it was without them', () => {
    const read = checkKeymap(corrected(correction()));
    const text = read.ok ? writeKeymap(read.value) : '';
    expect(text).toContain(
      '"variant": "mac", "corrections": [{ "code": "KeyE", "level": "level3", "gives": "é" }] }',
    );
    expect(readKeymap(text)).toMatchObject({ ok: true, value: { hosts: [{ corrections: [correction()] }] } });
    expect(writeKeymap(small())).toContain(
      '"hosts": [{ "system": "linux", "layout": "us", "variant": "" }],',
    );
  });
});

describe('refused with the path of the field', () => {
  const at = 'hosts[0].corrections';
  test.each<[string, object[], string]>([
    ['two characters', [correction({ gives: 'ab' })], `${at}[0].gives`],
    ['a name that is no dead key', [correction({ gives: 'dead_é' })], `${at}[0].gives`],
    ['a line break', [correction({ gives: '\n' })], `${at}[0].gives`],
    ['half a character', [correction({ gives: '\ud800' })], `${at}[0].gives`],
    ['a key that does not exist', [correction({ code: 'KeyÉ' })], `${at}[0].code`],
    ['a modifier', [correction({ code: 'ShiftLeft' })], `${at}[0].code`],
    ['a level that does not exist', [correction({ level: 'caps' })], `${at}[0].level`],
    ['a key twice at one level', [correction(), correction({ gives: '' })], `${at}[1]`],
    ['a field too many', [correction({ why: 'seen' })], `${at}[0].why`],
  ])('%s', (_, corrections, path) => {
    const read = checkKeymap(corrected(...corrections));
    expect(read.ok ? [] : read.problem.map((problem) => problem.path)).toEqual([path]);
  });
});
