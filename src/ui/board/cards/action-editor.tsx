import { type ReactNode, useState } from 'react';
import { codeName } from '../../../core/host/code-names.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { MODIFIERS, type Modifier } from '../../../core/keymap/codes.ts';
import type { Action, Keymap, Side } from '../../../core/keymap/types.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import { Select } from '../../widgets/select.tsx';
import {
  ACTION_KINDS,
  type ActionKind,
  labelProblem,
  readChar,
  startOf,
  textProblem,
} from './action-kinds.ts';
import styles from './cards.module.css';
import { CodeField } from './code-field.tsx';
import { ExactField } from './exact-field.tsx';
import { RecordKey } from './record-key.tsx';

interface ActionEditorProps {
  readonly keymap: Keymap;
  readonly host: HostLayout | null;
  readonly side: Side;
  readonly action: Action | undefined;
  readonly onChange: (action: Action) => void;
  /** Takes the action away; left out where there must be one. */
  readonly onNone?: (() => void) | undefined;
  /** The name of the choice of its kind. */
  readonly label?: string;
  /** The kinds to choose from; all where it is left out. */
  readonly kinds?: typeof ACTION_KINDS;
  /** What having no action means, in words. */
  readonly noneWords?: string;
}

/** Chooses what a tap, a hold or a chord does: first the kind, then what that kind needs to know. */
export function ActionEditor(props: ActionEditorProps) {
  const { keymap, side, action, onChange, onNone, noneWords = 'nothing chosen' } = props;
  const offered = props.kinds ?? ACTION_KINDS;
  // A kind that still lacks its character, key or text is only chosen here and not bound yet.
  const [begun, setBegun] = useState<ActionKind | null>(null);
  const kind = begun ?? action?.do ?? 'none';
  const take = (next: Action) => {
    setBegun(null);
    onChange(next);
  };
  const chooseKind = (next: ActionKind | 'none') => {
    setBegun(null);
    if (next === 'none') return onNone?.();
    const start = startOf(next, keymap, side);
    if (start === null) setBegun(next);
    else onChange(start);
  };
  const canBeLayer = keymap.layers.length > 1;
  const kinds = offered.filter(({ value }) => value !== 'layer' || canBeLayer);
  const none = { value: 'none' as const, label: noneWords };
  return (
    <div className={styles.editor}>
      <Select
        label={props.label ?? 'Does'}
        value={kind}
        options={onNone === undefined && kind !== 'none' ? kinds : [none, ...kinds]}
        onChange={chooseKind}
      />
      {kind !== 'none' && <KindFields {...props} kind={kind} onChange={take} />}
      <RecordKey onRecord={(code) => take({ do: 'key', code })} />
    </div>
  );
}

type KindProps = ActionEditorProps & { readonly kind: ActionKind };

/** The fields of one kind. */
function KindFields(props: KindProps): ReactNode {
  const { kind, action, onChange } = props;
  switch (kind) {
    case 'char':
      return (
        <ExactField
          label="Character"
          value={action?.do === 'char' ? action.char : ''}
          problemOf={(text) => (readChar(text) === null ? 'One character, please.' : undefined)}
          onCommit={(text) => onChange({ do: 'char', char: readChar(text) ?? text })}
        />
      );
    case 'key':
      return <KeyFields {...props} />;
    case 'text':
      return (
        <ExactField
          label="Text"
          value={action?.do === 'text' ? action.text : ''}
          problemOf={textProblem}
          onCommit={(text) => onChange({ do: 'text', text })}
        />
      );
    case 'layer':
      return action?.do === 'layer' ? <LayerFields {...props} action={action} /> : null;
    case 'modifier':
      return action?.do === 'modifier' ? <ModifierFields {...props} action={action} /> : null;
    case 'board':
      return (
        <ExactField
          label="Name of the function"
          value={action?.do === 'board' ? action.label : ''}
          problemOf={labelProblem}
          onCommit={(label) => onChange({ do: 'board', label })}
        />
      );
    case 'nothing':
    case 'repeat':
    case 'word-shift':
      return null;
  }
}

function KeyFields({ action, host, onChange }: KindProps) {
  const key = action?.do === 'key' ? action : null;
  const held: readonly Modifier[] = key?.with ?? [];
  const toggle = (modifier: Modifier, on: boolean) => {
    if (key === null) return;
    const next = MODIFIERS.filter((each) => (each === modifier ? on : held.includes(each)));
    onChange({ do: 'key', code: key.code, ...(next.length === 0 ? {} : { with: next }) });
  };
  return (
    <>
      <CodeField
        label="Key"
        value={key?.code ?? null}
        host={host}
        onChoose={(code) => onChange({ do: 'key', code, ...(held.length === 0 ? {} : { with: held }) })}
      />
      {key !== null && (
        <Disclosure title="With modifiers" startOpen={held.length > 0}>
          <fieldset className={styles.modifiers}>
            <legend className={styles.hidden}>Modifiers around it</legend>
            {MODIFIERS.map((modifier) => (
              <label key={modifier}>
                <input
                  type="checkbox"
                  checked={held.includes(modifier)}
                  onChange={(event) => toggle(modifier, event.target.checked)}
                />
                {codeName(modifier)}
              </label>
            ))}
          </fieldset>
        </Disclosure>
      )}
    </>
  );
}

function LayerFields({
  keymap,
  action,
  onChange,
}: KindProps & { readonly action: Extract<Action, { do: 'layer' }> }) {
  return (
    <div className={styles.pair}>
      <Select
        label="Layer"
        value={action.layer}
        options={keymap.layers.slice(1).map((layer) => ({ value: layer.id, label: layer.name }))}
        onChange={(layer) => onChange({ ...action, layer })}
      />
      <Select
        label="Stays on"
        value={action.mode}
        options={[
          { value: 'while-held', label: 'while held' },
          { value: 'latch', label: 'for the next press (latch)' },
          { value: 'lock', label: 'until pressed again (lock)' },
        ]}
        onChange={(mode) => onChange({ ...action, mode })}
      />
    </div>
  );
}

function ModifierFields({
  action,
  onChange,
}: KindProps & { readonly action: Extract<Action, { do: 'modifier' }> }) {
  return (
    <div className={styles.pair}>
      <Select
        label="Modifier"
        value={action.code}
        options={MODIFIERS.map((code) => ({ value: code, label: codeName(code) }))}
        onChange={(code) => onChange({ ...action, code })}
      />
      <Select
        label="Stays on"
        value={action.mode}
        options={[
          { value: 'latch', label: 'for the next press (latch)' },
          { value: 'lock', label: 'until pressed again (lock)' },
        ]}
        onChange={(mode) => onChange({ ...action, mode })}
      />
    </div>
  );
}
