import {
  addKeyBeside,
  giveToHand,
  type KeyNumbers,
  moveKeys,
  paintFinger,
  paintHome,
  removeKeys,
  setKeys,
  turnKeys,
} from '../../../../core/board/hand-work.ts';
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
import { fingerWords } from './shape-words.ts';
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
  const many = keys.length === 1 ? 'a key' : `${keys.length} keys`;
  return (
    <div className={styles.fields}>
      <p className={styles.selected}>
        {keys.length === 1 ? keyName(draft.board, first.id) : `${keys.length} keys`}
      </p>
      {keys.length === 1 ? <OneKey of={first} /> : <ManyKeys />}
      <Select
        label="Pressed by the"
        value={common(keys, ({ finger }) => finger) ?? ''}
        options={[
          ...(common(keys, ({ finger }) => finger) === undefined ? [DIFFERENT] : []),
          ...FINGER_OPTIONS,
        ]}
        onChange={(finger) => {
          if (finger !== '')
            change(`Give ${many} to the ${fingerWords(finger)}`, paintFinger(draft, which, finger));
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
        <Button
          onClick={() => {
            const added = addKeyBeside(draft, first.id, alike);
            change('Add a key', added.draft, added.keys);
          }}
        >
          Add a key beside
        </Button>
        <Button
          tone="danger"
          disabled={keys.length === draft.board.keys.length}
          onClick={() => change(`Remove ${many}`, removeKeys(draft, which), [])}
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
  readonly unit: string;
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
        const { mmOf, ...shown } = shownLength(
          { value: of[field], min, max, step },
          unit === 'mm' ? units : 'mm',
        );
        return (
          <NumberField
            key={field}
            label={label}
            {...shown}
            unit={unit === 'mm' ? shown.unit : unit}
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

/** Several keys are moved and turned together by an exact way. */
function ManyKeys() {
  const { draft, selected, alike } = useBoardWork();
  const change = useBoardDrafts((drafts) => drafts.change);
  const which = { keys: selected, alike };
  const many = `${selected.length} keys`;
  return (
    <div className={styles.numbers}>
      <NumberField
        label="Move across by"
        unit="mm"
        value={0}
        min={-2000}
        max={2000}
        step={0.25}
        onCommit={(x) => change(`Move ${many}`, moveKeys(draft, which, { x, y: 0 }))}
      />
      <NumberField
        label="Move down by"
        unit="mm"
        value={0}
        min={-2000}
        max={2000}
        step={0.25}
        onCommit={(y) => change(`Move ${many}`, moveKeys(draft, which, { x: 0, y }))}
      />
      <NumberField
        label="Turn together by"
        unit="°"
        value={0}
        min={-180}
        max={180}
        step={0.5}
        onCommit={(degrees) => change(`Turn ${many}`, turnKeys(draft, which, degrees))}
      />
    </div>
  );
}
