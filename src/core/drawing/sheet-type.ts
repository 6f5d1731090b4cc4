import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';

/** The three faces that a sheet is set in: legends and tables, titles and sentences, asides. */
export type FaceName = 'sans' | 'serif' | 'italic';

/** Advance and outline by sign, "ADVANCE PATH", in thousandths of the size, y downwards from the baseline. */
type Face = Readonly<Record<string, string>>;

/** The letters of a printed sheet, as outlines: the same on every machine, and nothing to be embedded. */
export interface SheetType {
  readonly faces: Readonly<Record<FaceName, Face>>;
}

/** One sign of a face. Lengths in thousandths of the size. */
export interface Outline {
  readonly advance: number;
  /** An SVG path, empty for spaces. */
  readonly path: string;
}

const face = z.record(z.string(), z.string().check(z.regex(/^\d{1,5} [mlqz\d .-]*$/)));

const sheetTypeSchema = z.object({
  faces: z.strictObject({ sans: face, serif: face, italic: face }),
});

/** Checks a table of letters that came from outside. The problem is a sentence. */
export function readSheetType(json: unknown): Result<SheetType, string> {
  const read = sheetTypeSchema.safeParse(json);
  if (read.success) return ok(read.data);
  return fail(`not a table of letters: ${read.error.issues[0]?.path.join('.') || 'the whole'}`);
}

/** A sign as a face has it, else as the sans face has it; undefined where neither does. */
export function outlineOf(type: SheetType, name: FaceName, sign: string): Outline | undefined {
  const text = own(type.faces[name], sign) ?? own(type.faces.sans, sign);
  if (text === undefined) return undefined;
  const space = text.indexOf(' ');
  return { advance: Number(text.slice(0, space)), path: text.slice(space + 1) };
}

function own(signs: Face, sign: string): string | undefined {
  return Object.hasOwn(signs, sign) ? signs[sign] : undefined;
}
