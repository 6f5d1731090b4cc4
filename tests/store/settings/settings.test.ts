import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS, readSettings } from '../../../src/store/settings/settings.ts';

describe('settings that were kept', () => {
  test('are read back as they were', () => {
    const settled = {
      ...DEFAULT_SETTINGS,
      theme: 'dark',
      units: 'inch',
      hiddenRungs: [2, 5],
      ink: 'black',
    } as const;
    expect(readSettings(JSON.stringify(settled))).toEqual(settled);
  });

  test.each([[null], [''], ['{'], ['[]'], ['null'], ['7'], ['{"theme":"pink","hiddenRungs":"all"}']])(
    '%j leaves the defaults',
    (kept) => {
      expect(readSettings(kept)).toEqual(DEFAULT_SETTINGS);
    },
  );

  test('one that makes no sense takes no other with it', () => {
    expect(readSettings('{"units":"inch","paper":"a5","hiddenRungs":[1,"2",null,3.5]}')).toEqual({
      ...DEFAULT_SETTINGS,
      units: 'inch',
      hiddenRungs: [1],
    });
  });

  test.each([
    [null, 'letter'],
    ['{"theme":"dark"}', 'letter'],
    ['{"paper":"a4"}', 'a4'],
  ])('the paper of the place holds until one is settled: %j', (kept, paper) => {
    expect(readSettings(kept, null, 'letter').paper).toBe(paper);
  });

  test('a theme from before there were other settings still holds, until another is settled', () => {
    expect(readSettings(null, 'dark').theme).toBe('dark');
    expect(readSettings('{"theme":"light"}', 'dark').theme).toBe('light');
  });
});
