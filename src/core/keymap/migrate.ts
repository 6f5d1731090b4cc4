import { fail, ok, type Result } from '../base/result.ts';
import { foundText, type Problem } from './problem.ts';

export const FORMAT = 'neutral-keymap';

/** The version of the format that this program reads and writes. */
export const VERSION = 1;

/** A document as an object of fields that are not checked yet. */
export type RawDocument = Readonly<Record<string, unknown>>;

/** Makes a document of the version of its key in the table into one of the next version, but for the number. */
export type MigrationSteps = ReadonlyMap<number, (document: RawDocument) => RawDocument>;

/** Version 1 is the first: nothing to do yet. The step from version 1 to 2 will stand under 1. */
const STEPS: MigrationSteps = new Map();

/**
 * Brings a document of an older version to the present one, step by step. Refused: another format, a newer version
 * (by name and version), a version that is no whole number or that no step leads away from.
 */
export function migrate(
  value: unknown,
  steps: MigrationSteps = STEPS,
  present: number = VERSION,
): Result<RawDocument, Problem> {
  if (!isRawDocument(value)) return fail({ path: [], found: foundText(value), expected: 'an object' });
  if (value.format !== FORMAT) {
    return fail({ path: ['format'], found: foundText(value.format), expected: JSON.stringify(FORMAT) });
  }
  let document = value;
  for (let version = versionOf(document); version !== present; version += 1) {
    const step = steps.get(version);
    if (!step) return fail(unreadableVersion(value.version, present));
    document = { ...step(document), version: version + 1 };
  }
  return ok(document);
}

function isRawDocument(value: unknown): value is RawDocument {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** NaN where the version is no number: no step has that key, so it is refused. */
function versionOf(document: RawDocument): number {
  return typeof document.version === 'number' ? document.version : Number.NaN;
}

function unreadableVersion(version: unknown, present: number): Problem {
  const expected = `a version that this program reads: ${present}`;
  if (typeof version !== 'number') return { path: ['version'], found: foundText(version), expected };
  const newer = version > present ? ', which is newer' : '';
  return { path: ['version'], found: `${FORMAT} version ${version}${newer}`, expected };
}
