import { useCallback, useEffect, useState } from 'react';
import type { Result } from '../../../core/base/result.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import { useBench } from '../../../store/bench.ts';
import {
  type ImportProblem,
  readImportedFile,
  readImportedText,
} from '../../../store/keeping/read-import.ts';
import { designs } from '../../../store/keeping/use-designs.ts';
import { isTextField } from '../is-text-field.ts';

/** Bringing in of keymaps, by whichever way. */
export interface Importing {
  readonly problem: ImportProblem | null;
  readonly closeProblem: () => void;
  /** Tells why something that was to be imported could not be read. */
  readonly showProblem: (problem: ImportProblem) => void;
  readonly importFile: (file: File) => Promise<void>;
  /** A file is being dragged over the page. */
  readonly isOver: boolean;
}

/** Takes in keymaps by file, drop and paste: a good one is kept beside the others, a broken one changes nothing. */
export function useImport(): Importing {
  const [problem, setProblem] = useState<ImportProblem | null>(null);
  const take = useCallback(async (read: Result<Keymap, ImportProblem>) => {
    if (!read.ok) return setProblem(read.problem);
    await designs.getState().addDesign(read.value);
    const text = `Imported “${read.value.name}”. It is kept beside the other designs.`;
    useBench.getState().notify({ tone: 'done', text, canUndo: false });
  }, []);
  const importFile = useCallback(async (file: File) => take(await readImportedFile(file, file.name)), [take]);
  const importText = useCallback(
    (text: string, source: string) => take(readImportedText(text, source)),
    [take],
  );
  usePaste(importFile, importText);
  const isOver = useDrop(importFile, importText);
  return { problem, closeProblem: () => setProblem(null), showProblem: setProblem, importFile, isOver };
}

type TakeFile = (file: File) => Promise<void>;
type TakeText = (text: string, source: string) => Promise<void>;

function usePaste(takeFile: TakeFile, takeText: TakeText): void {
  useEffect(() => {
    const pasted = (event: ClipboardEvent) => {
      if (isTextField(event.target) || document.querySelector('dialog[open]') !== null) return;
      const [file] = event.clipboardData?.files ?? [];
      const text = event.clipboardData?.getData('text/plain').trim() ?? '';
      if (file !== undefined) void takeFile(file);
      else if (looksLikeJson(text)) void takeText(text, 'The pasted text');
      else return;
      event.preventDefault();
    };
    document.addEventListener('paste', pasted);
    return () => document.removeEventListener('paste', pasted);
  }, [takeFile, takeText]);
}

/** A stray paste of some prose is not worth a dialog; what begins like an object was meant as a keymap. */
function looksLikeJson(text: string): boolean {
  return text.startsWith('{');
}

function useDrop(takeFile: TakeFile, takeText: TakeText): boolean {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    // A part of the page that takes files itself stops the event, but the cover must not stay over it.
    const entered = (event: DragEvent) => {
      if (event.target instanceof Element && event.target.closest('[data-takes-files]') !== null)
        setOver(false);
    };
    const over = (event: DragEvent) => {
      if (!brings(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const left = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const dropped = (event: DragEvent) => {
      setOver(false);
      if (!brings(event)) return;
      event.preventDefault();
      const [file] = event.dataTransfer?.files ?? [];
      if (file !== undefined) void takeFile(file);
      else void takeText(event.dataTransfer?.getData('text/plain') ?? '', 'The dropped text');
    };
    document.addEventListener('dragenter', entered);
    document.addEventListener('dragover', over);
    document.addEventListener('dragleave', left);
    document.addEventListener('drop', dropped);
    return () => {
      document.removeEventListener('dragenter', entered);
      document.removeEventListener('dragover', over);
      document.removeEventListener('dragleave', left);
      document.removeEventListener('drop', dropped);
    };
  }, [takeFile, takeText]);
  return isOver;
}

/** Whether a drag brings something to read; text over a text field is that field's own. */
function brings(event: DragEvent): boolean {
  const types = event.dataTransfer?.types ?? [];
  return types.includes('Files') || (types.includes('text/plain') && !isTextField(event.target));
}
