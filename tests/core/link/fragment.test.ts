import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { fromBase64url, toBase64url } from '../../../src/core/link/base64url.ts';
import { FRAGMENT_SIGNS, fragmentOf, packedOf } from '../../../src/core/link/fragment.ts';

describe('base64url', () => {
  // The test vectors of RFC 4648, section 10, without padding; the last two show the signs of its section 5.
  test.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg'],
    ['fooba', 'Zm9vYmE'],
    ['foobar', 'Zm9vYmFy'],
    ['\u00fb\u00ff', '-_8'],
    ['\u00ff\u00ef', '_-8'],
  ])('%j is %j and back', (plain, text) => {
    const bytes = Uint8Array.from(plain, (sign) => sign.charCodeAt(0));
    expect(toBase64url(bytes)).toBe(text);
    expect(fromBase64url(text)).toEqual(bytes);
  });

  test.each(['Z', 'Zm9vY', 'Zm9+', 'Zg==', 'Zh', 'Zm9 v', 'Zm9vé'])('%j is none', (text) => {
    expect(fromBase64url(text)).toBeNull();
  });

  test('any bytes come back, and as a second opinion says', () => {
    void fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const text = toBase64url(bytes);
        expect(fromBase64url(text)).toEqual(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
      }),
    );
  });
});

describe('the fragment of a link', () => {
  const packed = Uint8Array.of(1, 2, 3);

  test('comes back, with and without its #', () => {
    const fragment = fragmentOf(packed);
    expect(fragment).toEqual({ ok: true, value: 'design=1.AQID' });
    expect(packedOf('design=1.AQID')).toEqual({ ok: true, value: packed });
    expect(packedOf('#design=1.AQID')).toEqual({ ok: true, value: packed });
  });

  test.each(['', '#', '#help', 'designs=1.AQID', '#Design=1.AQID'])('%j is no link', (text) => {
    expect(packedOf(text)).toBeNull();
  });

  test.each([
    ['#design=', 'no version'],
    ['#design=AQID', 'no version'],
    ['#design=2.AQID', 'version 2 of links'],
    ['#design=0.AQID', 'version 0 of links'],
    ['#design=1.', 'signs that are no packed design'],
    ['#design=1.AQ ID', 'signs that are no packed design'],
    [`#design=1.${'A'.repeat(FRAGMENT_SIGNS.most)}`, 'a link of 65 kB'],
  ])('%.20s is refused', (text, found) => {
    expect(packedOf(text)).toMatchObject({ ok: false, problem: { found } });
  });

  test('none is written that would not be read', () => {
    const fits = Math.floor(((FRAGMENT_SIGNS.most - 'design=1.'.length) * 3) / 4);
    expect(fragmentOf(new Uint8Array(fits))).toMatchObject({ ok: true });
    expect(fragmentOf(new Uint8Array(fits + 3))).toMatchObject({ ok: false });
  });
});
