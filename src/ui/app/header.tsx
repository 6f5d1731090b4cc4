import { LIMITS } from '../../core/keymap/limits.ts';
import { useBench } from '../../store/bench.ts';
import { useDesigns } from '../../store/keeping/use-designs.ts';
import { Button, IconButton } from '../widgets/button.tsx';
import { Choice } from '../widgets/choice.tsx';
import { CommitField } from '../widgets/commit-field.tsx';
import { RedoIcon, UndoIcon } from '../widgets/icons.tsx';
import { MenuButton, type MenuItem } from '../widgets/menu.tsx';
import type { Desk } from './desks.ts';
import styles from './header.module.css';
import { savingText } from './saving-text.ts';

/** What the header can open or set off; the app does it. */
export interface HeaderProps {
  readonly desks: readonly Desk[];
  readonly desk: string;
  readonly onDesk: (id: string) => void;
  readonly designItems: readonly MenuItem[];
  readonly moreItems: readonly MenuItem[];
  readonly onExport: () => void;
}

/** The top of the page: which design, what can be taken back, and the ways in and out. */
export function Header({ desks, desk, onDesk, designItems, moreItems, onExport }: HeaderProps) {
  return (
    <header className={styles.header}>
      <Mark />
      <DesignName />
      <MenuButton label="Designs" items={designItems} />
      {desks.length > 1 && (
        <div className={styles.desks}>
          <Choice
            label="Desk"
            hideLabel
            value={desk}
            options={desks.map(({ id, title }) => ({ value: id, label: title }))}
            onChange={onDesk}
          />
        </div>
      )}
      <span className={styles.space} />
      <SavingWord />
      <Steps />
      <Button tone="quiet" onClick={onExport}>
        Export
      </Button>
      <MenuButton label="More" items={moreItems} />
    </header>
  );
}

/** The page's sign: the five columns of a hand, each as far out as its finger. */
function Mark() {
  return (
    <span className={styles.mark}>
      <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
        <path
          d="M3 12v6M8 7v12M13 4v14M18 6v11M22 16l-1.5 5"
          fill="none"
          stroke="var(--accent)"
          strokeWidth="3"
          strokeLinecap="round"
        />
      </svg>
      <h1 className={styles.word}>Handful</h1>
    </span>
  );
}

function DesignName() {
  const name = useBench((bench) => bench.keymap.name);
  const edit = useBench((bench) => bench.edit);
  const readOnly = useBench((bench) => bench.readOnly);
  if (readOnly) return <p className={styles.name}>{name}</p>;
  return (
    <CommitField
      label="Name of the design"
      hideLabel
      className={styles.name}
      value={name}
      maxLength={LIMITS.nameLength}
      problemOf={(text) => (text === '' ? 'A design needs a name.' : undefined)}
      onCommit={(text) => edit({ edit: 'rename-design', name: text })}
    />
  );
}

function SavingWord() {
  const saving = useDesigns((state) => state.saving);
  const readOnly = useBench((bench) => bench.readOnly);
  const { text, isBad } = savingText(saving, readOnly);
  return (
    <span className={styles.saving} data-bad={isBad} role={isBad ? 'alert' : undefined}>
      {text}
    </span>
  );
}

function Steps() {
  const undoes = useBench((bench) => bench.past.at(-1)?.title);
  const redoes = useBench((bench) => bench.future[0]?.title);
  const undo = useBench((bench) => bench.undo);
  const redo = useBench((bench) => bench.redo);
  return (
    <span className={styles.steps}>
      <IconButton
        label={undoes === undefined ? 'Nothing to undo' : `Undo: ${undoes}`}
        aria-disabled={undoes === undefined}
        onClick={undo}
      >
        <UndoIcon />
      </IconButton>
      <IconButton
        label={redoes === undefined ? 'Nothing to redo' : `Redo: ${redoes}`}
        aria-disabled={redoes === undefined}
        onClick={redo}
      >
        <RedoIcon />
      </IconButton>
    </span>
  );
}
