import { useContext } from 'react';
import type { Facts } from '../../../../core/findings/facts.ts';
import { type Placing, placeMissing } from '../../../../core/findings/place-missing.ts';
import { counted, listed, needInWords } from '../../../../core/findings/wording.ts';
import { analysisOf, useAnalysis } from '../../../../store/analysis.ts';
import { useBench } from '../../../../store/bench.ts';
import { useFindList } from '../../../../store/need-lists.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './findings.module.css';
import { TakeMend } from './take-mend.ts';

/** Offers places to all missing needs as one step; what finds none is told by name. */
export function PlaceAll({ missing }: { readonly missing: number }) {
  const take = useContext(TakeMend);
  const { host } = useAnalysis().facts;
  const findList = useFindList();
  const place = () => {
    const { keymap, notify } = useBench.getState();
    const { facts } = analysisOf(keymap, host, findList);
    const { edits, placed, left, withShift } = placeMissing(facts);
    if (edits.length === 0) return notify({ tone: 'refused', text: NONE, canUndo: false });
    take(
      { title: `Give ${counted(placed.length, 'missing need')} a place`, edits },
      [...(withShift ? [SHIFT] : []), leftInWords(facts, left)].join(' '),
    );
  };
  return (
    <div className={styles.all}>
      <Button onClick={place}>Find places for all {missing} missing needs</Button>
    </div>
  );
}

const NONE = 'None of the missing needs finds an empty place where a key would do no harm.';

const SHIFT = 'Shift came first: much that was missing is made with it.';

function leftInWords({ host }: Facts, left: Placing['left']): string {
  if (left.length === 0) return 'Every need has one now.';
  const names = listed(left.map((need) => needInWords(host, need)));
  return `No empty place was left for ${counted(left.length, 'other')}: ${names}.`;
}
