const NOT_TEXT = new Set(['button', 'checkbox', 'color', 'file', 'radio', 'range', 'reset', 'submit']);

/** Whether text is typed into an element, so that undoing and pasting there are its own business. */
export function isTextField(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement) return !NOT_TEXT.has(target.type);
  return target instanceof HTMLTextAreaElement || (target instanceof HTMLElement && target.isContentEditable);
}
