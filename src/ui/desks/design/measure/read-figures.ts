import { fail, type Result } from '../../../../core/base/result.ts';
import {
  MEASURED_LIMITS,
  type MeasuredFile,
  readMeasuredText,
} from '../../../../core/typist/measured-file.ts';

const MIB = 1024 * 1024;

/** Reads a file of figures, its size looked at first; the problems are sentences. */
export async function readFigures(
  file: Pick<File, 'size' | 'text'>,
): Promise<Result<MeasuredFile, readonly string[]>> {
  const { fileBytes } = MEASURED_LIMITS;
  if (file.size > fileBytes)
    return fail([
      `The file has ${Math.ceil(file.size / MIB)} MiB; ${fileBytes / MIB} MiB are taken at most.`,
    ]);
  const read = readMeasuredText(await file.text());
  return read.ok ? read : fail(read.problem.map(({ sentence }) => sentence));
}
