import { useMemo } from 'react';
import type { OnHost } from '../../../../core/coverage/host-changes.ts';
import type { Host } from '../../../../core/keymap/types.ts';
import { needsOfKeymap } from '../../../../core/needs/needs-of.ts';
import { findRoutes } from '../../../../core/routes/find-routes.ts';
import { useBench } from '../../../../store/bench.ts';
import { type KnownHost, useHostLayout } from '../../../../store/hosts.ts';
import { useFindList } from '../../../../store/need-lists.ts';

/** The open design's needs on any host, not only on its first; null until the host's table is there. */
export function useRoutesOn(wanted: Host): { readonly known: KnownHost; readonly onHost: OnHost | null } {
  const keymap = useBench((bench) => bench.keymap);
  const findList = useFindList();
  const known = useHostLayout(wanted);
  const { host, state } = known;
  const onHost = useMemo(
    () =>
      state === 'loading' ? null : { host, needs: findRoutes(keymap, host, needsOfKeymap(keymap, findList)) },
    [keymap, host, state, findList],
  );
  return { known, onHost };
}
