import type { Keymap } from '../../core/keymap/types.ts';
import { beaconLog } from './beacon-log.ts';
import { boxOfFaults } from './box-of-faults.ts';
import { kilnLedger } from './kiln-ledger.ts';
import { twoShoreAlmanac } from './two-shore-almanac.ts';

/** The demonstration designs by the names of their files. */
export const DEMOS: Readonly<Record<string, Keymap>> = {
  'beacon-log': beaconLog,
  'box-of-faults': boxOfFaults,
  'kiln-ledger': kilnLedger,
  'two-shore-almanac': twoShoreAlmanac,
};
