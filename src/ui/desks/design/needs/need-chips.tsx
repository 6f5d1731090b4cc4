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
  readonly onLook: (row: NeedRow | null) => void;
}) {
  const light = useBench((bench) => bench.light);
  const lookAt = (row: NeedRow) => {
    light(row.route === null ? null : litByRoute(row.route, row.name));
    onLook(row);
  };
  return (
    <RovingGroup label={group.title} className={styles.chips}>
      {group.rows.map((row, index) => (
        <Chip
          key={row.text}
          id={`need ${row.text}`}
          glyph={row.glyph}
          carried={{ carry: 'action', action: actionOfNeed(row.need), label: row.name }}
          label={`${row.name}, ${row.status}: ${row.cost}`}
          status={row.status}
          marks={<CostMarks route={row.route} />}
          tabStop={index === 0}
          onLookAt={() => lookAt(row)}
          onLookAway={() => light(null)}
        />
      ))}
    </RovingGroup>
  );
}
