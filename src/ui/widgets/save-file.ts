/** A text on its way out of the page: under which name, and of which kind. */
export interface OutgoingFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

/** Hands a text to the browser as a download. */
export function saveFile({ name, type, text }: OutgoingFile): void {
  saveBlob(name, new Blob([text], { type: `${type};charset=utf-8` }));
}

/** Hands anything to the browser as a download. */
export function saveBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser takes the address over a moment after the click.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
