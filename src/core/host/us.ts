import { hostFromTable } from './host-from-table.ts';
import type { HostLayout } from './host-layout.ts';
import { usTable } from './us-table.ts';

/** XKB's `us`, which is in the bundle so that the bench works at once and offline. */
export const usHost: HostLayout = hostFromTable(usTable);
