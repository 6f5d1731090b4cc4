import { useMemo } from 'react';
import type { OnHost } from '../../../../core/coverage/host-changes.ts';
import { sentKeys } from '../../../../core/coverage/sent-keys.ts';
import type { Host } from '../../../../core/keymap/types.ts';
import { needsOfKeymap } from '../../../../core/needs/needs-of.ts';
import { findRoutes } from '../../../../core/routes/find-routes.ts';
import { useBench } from '../../../../store/bench.ts';
import { type KnownHost, useHostLayout } from '../../../../store/hosts.ts';
import { useFindList } from '../../../../store/need-lists.ts';

/** The open design's needs on a host, if its characters were typed for that one; null until its table is there. */
export function useRoutesOn(wanted: Host): { readonly known: KnownHost; readonly onHost: OnHost | null } {
  return useRoutesMet(wanted, wanted);
}

/** The open design's needs on a host that reads the keys which the board sends for another. */
export function useRoutesMet(
  wanted: Host,
  typedFor: Host,
): { readonly known: KnownHost; readonly onHost: OnHost | null } {
  const keymap = useBench((bench) => bench.keymap);
  const findList = useFindList();
  const known = useHostLayout(wanted);
  const sender = useHostLayout(typedFor);
  const isLate = known.state === 'loading' || sender.state === 'loading';
  const onHost = useMemo(() => {
    if (isLate) return null;
    const met = sender === known ? keymap : sentKeys(keymap, sender.host, known.host);
    return { host: known.host, needs: findRoutes(met, known.host, needsOfKeymap(keymap, findList)) };
  }, [keymap, known, sender, isLate, findList]);
  return { known, onHost };
}
