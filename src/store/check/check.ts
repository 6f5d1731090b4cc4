import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { CheckPlan } from '../../core/check/steps.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { CheckPlanning } from '../../workers/check-plan.worker.ts';
import { useBench } from '../bench.ts';
import { type KnownHost, useHost } from '../hosts.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { type CheckState, makeCheck } from './make-check.ts';

const { values } = indexedDbOrMemory({ database: 'handful check', store: 'checks' });

/** The page's check. */
export const check = makeCheck(values, () => Date.now());

/**
 * Takes the check of the open design up: when the desk is set up, with every other design, and when this tab gets the
 * design back from another one.
 */
export function useOpenCheck(): void {
  const designId = useBench((bench) => bench.designId);
  const readOnly = useBench((bench) => bench.readOnly);
  useEffect(() => {
    if (!readOnly || check.getState().designId !== designId) void check.getState().open(designId);
  }, [designId, readOnly]);
}

/** Reads from the check of the open design. */
export function useCheck<Part>(select: (state: CheckState) => Part): Part {
  return useStore(check, select);
}

/** What there is to check of the open design on its first host. */
export interface CheckRoom {
  readonly keymap: Keymap;
  readonly known: KnownHost;
  /** Null while it is worked out. */
  readonly plan: CheckPlan | null;
  readonly failed: boolean;
}

/** Works the plan out beside the page, which a search for the way to every place would hold up. */
export function useCheckRoom(): CheckRoom {
  const keymap = useBench((bench) => bench.keymap);
  const known = useHost(keymap);
  const [made, setMade] = useState<{ of: Keymap; on: KnownHost; plan: CheckPlan | null } | null>(null);
  useEffect(() => {
    if (known.state === 'loading') return;
    const worker = new Worker(new URL('../../workers/check-plan.worker.ts', import.meta.url), {
      type: 'module',
    });
    const give = (plan: CheckPlan | null) => setMade({ of: keymap, on: known, plan });
    worker.addEventListener('error', () => give(null));
    wrap<CheckPlanning>(worker)
      .plan(keymap, known.table)
      .then(give, () => give(null));
    return () => worker.terminate();
  }, [keymap, known]);
  const isNow = made !== null && made.of === keymap && made.on === known;
  return { keymap, known, plan: isNow ? made.plan : null, failed: isNow && made.plan === null };
}
