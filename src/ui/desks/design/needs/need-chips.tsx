import { memo } from 'react';
import { useBench } from '../../../../store/bench.ts';
import { RovingGroup } from '../../../widgets/roving-group.tsx';
import { litByRoute } from '../route-lit.ts';
import { actionOfNeed } from './action-of-need.ts';
import { Chip } from './chip.tsx';
import { CostMarks } from './cost-marks.tsx';
import type { NeedGroup } from './need-groups.ts';
import type { NeedRow } from './need-rows.ts';
import styles from './needs-panel.module.css';

/** The needs of one list as chips. Looking at one lights its route up on the board. */
export function NeedChips({
  group,
  onLook,
}: {
  readonly group: NeedGroup;
  /** Takes the need as it is written. */
  readonly onLook: (need: string) => void;
}) {
  return (
    <RovingGroup label={group.title} className={styles.chips}>
      {group.rows.map((row, index) => (
        <NeedChip key={row.text} row={row} tabStop={index === 0} onLook={onLook} />
      ))}
    </RovingGroup>
  );
}

interface NeedChipProps {
  readonly row: NeedRow;
  readonly tabStop: boolean;
  readonly onLook: (need: string) => void;
}

/** Drawn anew only when its row is another one: a design asks for hundreds, and an edit concerns few. */
const NeedChip = memo(function NeedChip({ row, tabStop, onLook }: NeedChipProps) {
  const light = useBench((bench) => bench.light);
  return (
    <Chip
      id={`need ${row.text}`}
      glyph={row.glyph}
      carried={{ carry: 'action', action: actionOfNeed(row.need), label: row.name }}
      label={`${row.name}, ${row.status}: ${row.cost}`}
      status={row.status}
      marks={<CostMarks route={row.route} />}
      tabStop={tabStop}
      onLookAt={() => {
        light(row.route === null ? null : litByRoute(row.route, row.name));
        onLook(row.text);
      }}
      onLookAway={() => light(null)}
    />
  );
});
