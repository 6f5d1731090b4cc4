import { useCallback } from 'react';

/** A function that lets the typist choose one file, and hands it on. Nothing happens if none is chosen. */
export function useFilePicker(accept: string, onFile: (file: File) => Promise<void>): () => void {
  return useCallback(() => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.addEventListener('change', () => {
      const [file] = input.files ?? [];
      if (file !== undefined) void onFile(file);
    });
    input.click();
  }, [accept, onFile]);
}
