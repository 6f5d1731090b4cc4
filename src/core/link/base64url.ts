const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

const values = new Map([...SIGNS].map((sign, value) => [sign, value]));

/** Bytes as text of letters, figures, - and _ (RFC 4648, section 5), without padding: an address carries it as it is. */
export function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const three = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    const signs = Math.min(4, bytes.length - at + 1);
    for (let sign = 0; sign < signs; sign++) text += SIGNS[(three >> (18 - 6 * sign)) & 63];
  }
  return text;
}

/** The bytes of such a text; null where it is none: another sign, a length that no bytes have, bits left over. */
export function fromBase64url(text: string): Uint8Array<ArrayBuffer> | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let waiting = 0;
  let bits = 0;
  let at = 0;
  for (const sign of text) {
    const value = values.get(sign);
    if (value === undefined) return null;
    waiting = ((waiting << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (waiting >> bits) & 255;
  }
  return (waiting & ((1 << bits) - 1)) === 0 ? bytes : null;
}
