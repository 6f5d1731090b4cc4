import { fail, ok, type Result } from '../../core/base/result.ts';

/** Compresses a text (in UTF-8) or bytes as zlib does (RFC 1950), with the platform's own means. */
export async function pack(content: BlobPart): Promise<Uint8Array<ArrayBuffer>> {
  const packed = new Blob([content]).stream().pipeThrough(new CompressionStream('deflate'));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

/** Why packed bytes are no text. */
export type UnpackFault = 'damaged' | 'too large' | 'no text';

/**
 * The text of packed bytes. The unpacking is broken off as soon as it has come to more than `most` bytes, however much
 * would follow.
 */
export async function unpackText(
  packed: Uint8Array<ArrayBuffer>,
  most: number,
): Promise<Result<string, UnpackFault>> {
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let bytes = 0;
  let fault: UnpackFault = 'damaged';
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      bytes += value.byteLength;
      if (bytes > most) {
        await reader.cancel().catch(() => undefined);
        return fail('too large');
      }
      fault = 'no text';
      text += decoder.decode(value, { stream: true });
      fault = 'damaged';
    }
    fault = 'no text';
    return ok(text + decoder.decode());
  } catch {
    await reader.cancel().catch(() => undefined);
    return fail(fault);
  }
}
