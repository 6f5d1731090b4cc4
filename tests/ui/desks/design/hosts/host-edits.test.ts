import { describe, expect, test } from 'vitest';
import type { Correction, Host } from '../../../../../src/core/keymap/types.ts';
import {
  corrected,
  movedTo,
  readAlike,
  uncorrected,
  withAnother,
  withLayout,
  without,
  withSystem,
} from '../../../../../src/ui/desks/design/hosts/host-edits.ts';

const polish: Host = { system: 'linux', layout: 'pl', variant: '' };
const mac: Host = { system: 'macos', layout: 'us', variant: 'mac' };
const german: Host = { system: 'windows', layout: 'de', variant: '' };
const e: Correction = { code: 'KeyE', level: 'level3', gives: 'é' };
const euro: Correction = { code: 'Digit5', level: 'level3', gives: '€' };

describe('the list of computers', () => {
  test('a further one comes last, on the system of the first', () => {
    expect(withAnother([mac])).toEqual([mac, { system: 'macos', layout: 'us', variant: '' }]);
  });

  test.each([
    [2, 0, [german, polish, mac]],
    [2, 1, [polish, german, mac]],
    [0, 2, [mac, german, polish]],
    [5, 0, [polish, mac, german]],
  ])('the one at %i moved to %i', (from, to, expected) => {
    expect(movedTo([polish, mac, german], from, to)).toEqual(expected);
  });

  test('one is taken away, but never the last', () => {
    expect(without([polish, mac], 0)).toEqual([mac]);
    expect(without([polish], 0)).toEqual([polish]);
  });
});

describe('a computer', () => {
  const hosts = [{ ...polish, corrections: [e] }, mac];

  test('keeps its corrections on another system, and loses them with its table', () => {
    expect(withSystem(hosts, 0, 'windows')).toEqual([
      { system: 'windows', layout: 'pl', variant: '', corrections: [e] },
      mac,
    ]);
    expect(withLayout(hosts, 0, { layout: 'us', variant: 'mac' })).toEqual([
      { system: 'linux', layout: 'us', variant: 'mac' },
      mac,
    ]);
    expect(withLayout(hosts, 1, german)[0]).toBe(hosts[0]);
  });

  test('is corrected key by key; the later word on a key and level holds', () => {
    const twice = corrected(corrected([mac], 0, e), 0, euro);
    expect(twice[0]?.corrections).toEqual([e, euro]);
    expect(corrected(twice, 0, { ...e, gives: '' })[0]?.corrections).toEqual([euro, { ...e, gives: '' }]);
    expect(corrected(twice, 0, { ...e, level: 'plain' })[0]?.corrections).toHaveLength(3);
  });

  test('is as it was when the last correction is taken back', () => {
    expect(uncorrected(corrected([mac, polish], 0, e), 0, e)).toEqual([mac, polish]);
  });
});

test('hosts read alike by layout and corrections, not by the name of the system', () => {
  expect(readAlike(polish, { ...polish, system: 'windows', corrections: [] })).toBe(true);
  expect(readAlike(polish, german)).toBe(false);
  expect(readAlike(mac, { ...mac, variant: '' })).toBe(false);
  expect(readAlike({ ...mac, corrections: [e] }, mac)).toBe(false);
});
