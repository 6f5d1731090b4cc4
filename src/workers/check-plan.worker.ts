import { expose } from 'comlink';
import { type CheckPlan, checkPlan } from '../core/check/steps.ts';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostTable } from '../core/host/host-table.ts';
import type { Keymap } from '../core/keymap/types.ts';

/** What the page can ask of the worker. */
export interface CheckPlanning {
  plan(keymap: Keymap, table: HostTable): CheckPlan;
}

const planning: CheckPlanning = { plan: (keymap, table) => checkPlan(keymap, hostFromTable(table)) };

expose(planning);
