import { type Facts, factsOf } from '../core/findings/facts.ts';
import type { Finding } from '../core/findings/find.ts';
import { findAll } from '../core/findings/find-all.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import type { Keymap } from '../core/keymap/types.ts';
import { needListNamed } from '../core/needs/need-lists.ts';
import type { FindList } from '../core/needs/needs-of.ts';
import type { NeedRoute } from '../core/routes/types.ts';
import { useBench } from './bench.ts';
import { useHost } from './hosts.ts';
import { useFindList } from './need-lists.ts';

/** All that the bench says about the open design. */
export interface Analysis {
  readonly facts: Facts;
  readonly findings: readonly Finding[];
  /** The design's needs in its own order, each with its cheapest route. */
  readonly needs: readonly NeedRoute[];
}

interface Done {
  readonly host: HostLayout;
  readonly findList: FindList;
  readonly analysis: Analysis;
}

const done = new WeakMap<Keymap, Done>();

/** Analyses a design on a host; the same keymap object on the same host is analysed once, however many ask. */
export function analysisOf(keymap: Keymap, host: HostLayout, findList: FindList = needListNamed): Analysis {
  const known = done.get(keymap);
  if (known?.host === host && known.findList === findList) return known.analysis;
  const facts = factsOf(keymap, host, undefined, findList);
  const analysis = { facts, findings: findAll(facts), needs: facts.needs };
  done.set(keymap, { host, findList, analysis });
  return analysis;
}

/** The analysis of the open design, renewed with every edit. */
export function useAnalysis(): Analysis {
  const keymap = useBench((state) => state.keymap);
  const { host } = useHost(keymap);
  return analysisOf(keymap, host, useFindList());
}
