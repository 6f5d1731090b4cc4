import { createContext, useContext } from 'react';
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

/** The analysis that the part of the page around a component works with; null where each asks for itself. */
export const AnalysisAround = createContext<Analysis | null>(null);

/**
 * The analysis of the open design, renewed with every edit: at once, or within `AnalysisAfterEdit` a moment later.
 * Whoever needs the keymap that it is about finds it in the facts.
 */
export function useAnalysis(): Analysis {
  const around = useContext(AnalysisAround);
  const keymap = useBench((bench) => around?.facts.keymap ?? bench.keymap);
  const { host } = useHost(keymap);
  const findList = useFindList();
  return around ?? analysisOf(keymap, host, findList);
}
