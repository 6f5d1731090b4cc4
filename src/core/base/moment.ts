import * as z from 'zod/mini';

/** A time of day that can be told, ms since 1970: to the end of what dates hold (ECMA-262, time values and time range). */
export const momentSchema = z.number().check(z.gte(0), z.lte(8.64e15));
