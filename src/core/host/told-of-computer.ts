import * as z from 'zod/mini';
import { CODES } from '../keymap/codes.ts';
import { type Missing, NOTHING_MISSING, type ProbeAnswer } from './tell-apart.ts';

/** What presses have told of the computer at hand, and which layouts nobody wanted to be asked about. */
export interface ToldOfComputer {
  readonly answers: readonly ProbeAnswer[];
  readonly missing: Missing;
  /** XKB names of the layouts of designs for which the presses were skipped. */
  readonly skipped: readonly string[];
  /** When the last of it was told, ms since 1970. */
  readonly at: number;
}

export const NOTHING_TOLD: ToldOfComputer = { answers: [], missing: NOTHING_MISSING, skipped: [], at: 0 };

/** So long what was told holds, ms: till the next day of work. A computer can be set to another layout: our own choice. */
export const HOLDS_FOR_MS = 12 * 60 * 60 * 1000;

const code = z.enum(CODES);
const schema = z.object({
  answers: z.array(
    z.object({
      probe: z.object({ code, shift: z.boolean(), level3: z.boolean() }),
      key: z.string(),
      caps: z.boolean(),
    }),
  ),
  missing: z.object({ codes: z.array(code), level3: z.boolean() }),
  skipped: z.array(z.string()),
  at: z.number(),
});

/** What was kept, as far as it can be read and still holds. */
export function readComputer(text: string | null, now: number): ToldOfComputer {
  try {
    const read = schema.safeParse(JSON.parse(text ?? 'null'));
    const holds = read.success && read.data.at <= now && now - read.data.at < HOLDS_FOR_MS;
    return holds ? read.data : NOTHING_TOLD;
  } catch {
    return NOTHING_TOLD;
  }
}
