import { expose } from 'comlink';
import { type CountedFiles, type CountProgress, countFiles } from './count-files.ts';

/** What the page can ask of the worker. */
export interface TextCounting {
  count(files: readonly File[], tell: (progress: CountProgress) => void): Promise<CountedFiles>;
}

const counting: TextCounting = { count: (files, tell) => countFiles(files, tell) };

expose(counting);
