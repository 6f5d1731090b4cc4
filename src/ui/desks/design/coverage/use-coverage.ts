import { useMemo } from 'react';
import { needsOfText } from '../../../../core/needs/text-needs.ts';
import { findRoutes } from '../../../../core/routes/find-routes.ts';
import { useAnalysis } from '../../../../store/analysis.ts';
import { useFindList } from '../../../../store/need-lists.ts';
import { useOwnText } from '../../../../store/own-text/own-text.ts';
import { needSources } from '../needs/need-sources.ts';
import { type CoverageReport, coverageReport } from './coverage-report.ts';

/** The coverage of the open design, worked out anew with every edit for as long as it is looked at. */
export function useCoverage(): CoverageReport {
  const { facts, needs } = useAnalysis();
  const { keymap, host } = facts;
  const findList = useFindList();
  const counts = useOwnText(({ text }) => text?.counts);
  const textNeeds = useMemo(() => (counts === undefined ? [] : needsOfText(counts)), [counts]);
  return useMemo(() => {
    const sources = needSources(keymap, findList);
    if (counts === undefined) return coverageReport(keymap, needs, sources, null);
    return coverageReport(keymap, needs, sources, { counts, needs: findRoutes(keymap, host, textNeeds) });
  }, [keymap, host, needs, findList, counts, textNeeds]);
}
