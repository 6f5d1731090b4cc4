import { fail, ok, type Result } from '../base/result.ts';
import { fromBase64url, toBase64url } from './base64url.ts';

/** The version of links that this program writes and reads: JSON of a neutral keymap in UTF-8, compressed as zlib (RFC 1950). */
const VERSION = 1;

const NAME = 'design=';

/**
 * Signs of a fragment. Up to `short` every program that passes addresses on may be expected to keep it whole (common
 * practice, no source); beyond `most` none is written or read.
 */
export const FRAGMENT_SIGNS = { short: 8 * 1024, most: 64 * 1024 } as const;

/** Why a fragment is no link to a design: what was found and what was expected. */
export interface LinkProblem {
  readonly found: string;
  readonly expected: string;
}

/** The fragment (without #) that carries a packed design; a problem where it would be too long. */
export function fragmentOf(packed: Uint8Array): Result<string, LinkProblem> {
  const fragment = `${NAME}${VERSION}.${toBase64url(packed)}`;
  return fragment.length > FRAGMENT_SIGNS.most ? fail(tooLong(fragment)) : ok(fragment);
}

/** The packed design that a fragment carries; null where it does not claim to carry one. */
export function packedOf(fragment: string): Result<Uint8Array<ArrayBuffer>, LinkProblem> | null {
  const text = fragment.replace(/^#/, '');
  if (!text.startsWith(NAME)) return null;
  if (text.length > FRAGMENT_SIGNS.most) return fail(tooLong(text));
  const [, version, packed] = /^design=(\d{1,4})\.(.*)$/s.exec(text) ?? [];
  if (version === undefined || packed === undefined) {
    return fail({ found: 'no version', expected: `design=${VERSION}. and the packed design` });
  }
  if (Number(version) !== VERSION) {
    return fail({ found: `version ${Number(version)} of links`, expected: `version ${VERSION}` });
  }
  const bytes = fromBase64url(packed);
  if (bytes === null || bytes.length === 0) {
    return fail({
      found: 'signs that are no packed design',
      expected: 'the whole address, as it was copied',
    });
  }
  return ok(bytes);
}

function tooLong(fragment: string): LinkProblem {
  const kilobytes = (signs: number) => `${Math.ceil(signs / 1024)} kB`;
  return {
    found: `a link of ${kilobytes(fragment.length)}`,
    expected: `${kilobytes(FRAGMENT_SIGNS.most)} at most`,
  };
}
