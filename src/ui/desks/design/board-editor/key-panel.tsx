import { giveToHand, type KeyNumbers, paintHome, setKeys } from '../../../../core/board/hand-work.ts';
import { keyName } from '../../../../core/board/key-name.ts';
import type { BoardKey, Finger, Hand } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { shownLength } from '../../../../store/settings/lengths.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { NumberField } from '../../../widgets/number-field.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import { FINGER_OPTIONS } from './finger-options.ts';
import styles from './panel.module.css';
import type { ShapeCommand } from './shape-command.ts';
import { stepOf } from './shape-step.ts';
import { keysWords } from './shape-words.ts';
import { useBoardWork } from './use-board-work.ts';

/** What is selected in exact numbers, and what can be done to it. */
export function KeyPanel() {
  const { draft, selected, alike } = useBoardWork();
  const change = useBoardDrafts((drafts) => drafts.change);
  const keys = draft.board.keys.filter(({ id }) => selected.includes(id));
  const [first] = keys;
  if (first === undefined) {
    return (
      <p className={styles.quiet}>
        Press a key of the board to see its numbers; drag across several to catch them.
      </p>
    );
  }
  const which = { keys: selected, alike };
  const many = keysWords(keys.length);
  const obeyed = (command: ShapeCommand) => {
    const step = stepOf(command, [first.id, ...selected.filter((id) => id !== first.id)], draft, alike);
    if (step !== null) change(step.title, step.draft, step.selected);
  };
  return (
    <div className={styles.fields}>
      <p className={styles.selected}>
        {keys.length === 1 ? keyName(draft.board, first.id) : `${keys.length} keys`}
      </p>
      {keys.length === 1 ? <OneKey of={first} /> : <ManyKeys onCommand={obeyed} />}
      <Select
        label="Pressed by the"
        value={common(keys, ({ finger }) => finger) ?? ''}
        options={[
          ...(common(keys, ({ finger }) => finger) === undefined ? [DIFFERENT] : []),
          ...FINGER_OPTIONS,
        ]}
        onChange={(finger) => {
          if (finger !== '') obeyed({ command: 'finger', finger });
        }}
      />
      <Choice
        label="Of the hand"
        value={common(keys, ({ hand }) => hand) ?? ''}
        options={HANDS}
        onChange={(hand) => {
          if (hand !== '') change(`Give ${many} to the ${hand} hand`, giveToHand(draft, which, hand));
        }}
      />
      <Switch
        label="The finger rests here"
        on={keys.every(({ home }) => home)}
        onChange={(home) => change('Change home keys', paintHome(draft, which, home))}
      />
      <div className={styles.rowOfButtons}>
        <Button onClick={() => obeyed({ command: 'add' })}>Add a key beside</Button>
        <Button
          tone="danger"
          disabled={keys.length === draft.board.keys.length}
          onClick={() => obeyed({ command: 'remove' })}
        >
          Remove
        </Button>
      </div>
    </div>
  );
}

const HANDS: readonly { readonly value: Hand | ''; readonly label: string }[] = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
];

const DIFFERENT: { readonly value: Finger | ''; readonly label: string } = {
  value: '',
  label: 'Different fingers',
};

/** What all keys have in common; undefined where they differ. */
function common<Value>(keys: readonly BoardKey[], of: (key: BoardKey) => Value): Value | undefined {
  const values = new Set(keys.map(of));
  return values.size === 1 ? [...values][0] : undefined;
}

const NUMBERS: readonly {
  readonly field: keyof KeyNumbers;
  readonly label: string;
  readonly unit: 'mm' | '°';
  readonly min: number;
  readonly max: number;
}[] = [
  { field: 'x', label: 'Across', unit: 'mm', min: -2000, max: 2000 },
  { field: 'y', label: 'Down', unit: 'mm', min: -2000, max: 2000 },
  { field: 'rotation', label: 'Turn', unit: '°', min: -180, max: 180 },
  { field: 'width', label: 'Width', unit: 'mm', min: 5, max: 200 },
  { field: 'height', label: 'Height', unit: 'mm', min: 5, max: 200 },
];

function OneKey({ of }: { readonly of: BoardKey }) {
  const { draft, selected, alike } = useBoardWork();
  const change = useBoardDrafts((drafts) => drafts.change);
  const units = useSettings((settings) => settings.units);
  return (
    <div className={styles.numbers}>
      {NUMBERS.map(({ field, label, unit, min, max }) => {
        const step = field === 'rotation' ? 0.5 : 0.25;
        const { mmOf, ...shown } = shownLength({ value: of[field], min, max, step, unit }, units);
        return (
          <NumberField
            key={field}
            label={label}
            {...shown}
            onCommit={(value) =>
              change(
                `Set a key’s ${label.toLowerCase()}`,
                setKeys(draft, { keys: selected, alike }, { [field]: mmOf(value) }),
              )
            }
          />
        );
      })}
    </div>
  );
}

/** Ways by which several keys are moved and turned together, and what each asks for. */
const WAYS: readonly {
  readonly label: string;
  readonly unit: 'mm' | '°';
  readonly most: number;
  readonly step: number;
  readonly command: (by: number) => ShapeCommand;
}[] = [
  {
    label: 'Move across by',
    unit: 'mm',
    most: 2000,
    step: 0.25,
    command: (x) => ({ command: 'move', by: { x, y: 0 } }),
  },
  {
    label: 'Move down by',
    unit: 'mm',
    most: 2000,
    step: 0.25,
    command: (y) => ({ command: 'move', by: { x: 0, y } }),
  },
  {
    label: 'Turn together by',
    unit: '°',
    most: 180,
    step: 0.5,
    command: (degrees) => ({ command: 'turn', degrees }),
  },
];

/** Several keys are moved and turned together by an exact way. */
function ManyKeys({ onCommand }: { readonly onCommand: (command: ShapeCommand) => void }) {
  const units = useSettings((settings) => settings.units);
  return (
    <div className={styles.numbers}>
      {WAYS.map(({ label, unit, most, step, command }) => {
        const { mmOf, ...shown } = shownLength({ value: 0, min: -most, max: most, step, unit }, units);
        return (
          <NumberField
            key={label}
            label={label}
            {...shown}
            onCommit={(value) => onCommand(command(mmOf(value)))}
          />
        );
      })}
    </div>
  );
}
