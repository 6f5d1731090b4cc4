import { RovingGroup } from '../../../widgets/roving-group.tsx';
import { Chip } from './chip.tsx';
import styles from './needs-panel.module.css';
import type { PaletteEntry } from './palette.ts';

/** Layer keys, modifiers and the blank, as chips. */
export function PaletteChips({
  label,
  entries,
}: {
  readonly label: string;
  readonly entries: readonly PaletteEntry[];
}) {
  return (
    <RovingGroup label={label} className={styles.chips}>
      {entries.map((entry, index) => (
        <Chip
          key={entry.id}
          id={entry.id}
          glyph={entry.glyph}
          carried={{ carry: 'action', action: entry.action, label: entry.name }}
          label={entry.name}
          tabStop={index === 0}
        />
      ))}
    </RovingGroup>
  );
}
