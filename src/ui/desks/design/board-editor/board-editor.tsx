import { useState } from 'react';
import { draftOf } from '../../../../core/board/draft.ts';
import type { Finger } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Button, IconButton } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { DeskFrame } from '../../../widgets/desk-frame.tsx';
import { BackIcon, RedoIcon, UndoIcon } from '../../../widgets/icons.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import styles from './board-editor.module.css';
import { FINGER_OPTIONS } from './finger-options.ts';
import { BoardFaults, KeptPanel } from './kept-panel.tsx';
import { KeyPanel } from './key-panel.tsx';
import panel from './panel.module.css';
import { PaperDialog } from './paper-dialog.tsx';
import { ShapeCanvas } from './shape-canvas.tsx';
import type { Tool } from './shape-gesture.ts';
import { ShapePanel } from './shape-panel.tsx';
import { isChanged, sizeWords } from './shape-words.ts';
import { useBecame } from './use-became.ts';
import { useBoardWork } from './use-board-work.ts';
import { UseDialog } from './use-dialog.tsx';
import { useDraftUndo } from './use-draft-undo.ts';

const TOOLS: readonly { readonly value: Tool; readonly label: string }[] = [
  { value: 'arrange', label: 'Arrange' },
  { value: 'finger', label: 'Fingers' },
  { value: 'home', label: 'Home keys' },
  { value: 'add', label: 'Add keys' },
];

const HINTS: Readonly<Record<Tool, string>> = {
  arrange:
    'Drag keys to move them. Shift and arrows move by 1 mm, Page Up and Down turn, Alt makes it a tenth and keeps from snapping.',
  finger: 'Drag across keys to give them to the finger. By keys: 1 for the thumb to 5 for the little finger.',
  home: 'Drag across keys to make them home keys; a finger has one. By keys: H.',
  add: 'Press where the new key is to be. By keys: Enter adds one beside the key in focus, Delete removes.',
};

/** The desk for the board itself: its numbers, the board to take hold of, and what becomes of the design. */
export function BoardEditor() {
  const [tool, setTool] = useState<Tool>('arrange');
  const [finger, setFinger] = useState<Finger>('index');
  useDraftUndo();
  const lost = useLost();
  return (
    <DeskFrame
      left={<ShapePanel />}
      leftLabel="Shape in numbers"
      main={
        <div className={styles.main}>
          <Head />
          <ToolBar tool={tool} onTool={setTool} finger={finger} onFinger={setFinger} />
          <ShapeCanvas tool={tool} finger={finger} />
          <p className={styles.hint}>{HINTS[tool]}</p>
        </div>
      }
      right={
        <div className={panel.panel}>
          <KeptPanel />
          <section className={panel.part} aria-label="Selected">
            <h2>Selected</h2>
            <KeyPanel />
          </section>
          <BoardFaults />
        </div>
      }
      rightLabel="Selected, what is bound"
      rightBadge={lost}
    />
  );
}

/** How many bindings lose their place: what a closed side must still say; null where none do. */
function useLost(): string | null {
  const { shown } = useBoardWork();
  const { losses } = useBecame(shown);
  return losses.lostBindings === 0 ? null : `${losses.lostBindings} lost`;
}

function Head() {
  const { draft, shown } = useBoardWork();
  const { losses } = useBecame(draft);
  const { use, close, change } = useBoardDrafts.getState();
  const [asking, setAsking] = useState(false);
  const units = useSettings((settings) => settings.units);
  const [printing, setPrinting] = useState(false);
  const changed = isChanged(draft);
  const wanted = () => {
    if (losses.lostBindings === 0 && losses.chords.length === 0 && losses.notes === 0) use();
    else setAsking(true);
  };
  return (
    <header className={styles.head}>
      {changed && (
        <IconButton label="Back to the keys; the work on the board is kept" onClick={close}>
          <BackIcon />
        </IconButton>
      )}
      <h2 className={styles.title}>
        <span className={styles.name}>{shown.board.name}</span>
        <span className={panel.quiet}>{sizeWords(shown.board, units)}</span>
      </h2>
      <div className={styles.actions}>
        <Button tone="quiet" title="At true size, to lay the hands on" onClick={() => setPrinting(true)}>
          Print…
        </Button>
        {changed ? (
          <>
            <Button tone="quiet" onClick={() => change('Undo all', draftOf(draft.origin))}>
              Undo all
            </Button>
            <Button tone="accent" onClick={wanted}>
              Use this board
            </Button>
          </>
        ) : (
          <Button tone="accent" onClick={close}>
            Back to the keys
          </Button>
        )}
      </div>
      {printing && <PaperDialog board={draft.board} onClose={() => setPrinting(false)} />}
      {asking && <UseDialog losses={losses} onUse={use} onClose={() => setAsking(false)} />}
    </header>
  );
}

function ToolBar({
  tool,
  onTool,
  finger,
  onFinger,
}: {
  readonly tool: Tool;
  readonly onTool: (tool: Tool) => void;
  readonly finger: Finger;
  readonly onFinger: (finger: Finger) => void;
}) {
  const { alike, past, future } = useBoardWork();
  const { setAlike, undo, redo } = useBoardDrafts.getState();
  const [back, forth] = [past.at(-1), future[0]];
  return (
    <div className={styles.tools}>
      <Choice label="What a press does" hideLabel value={tool} options={TOOLS} onChange={onTool} />
      {tool === 'finger' && (
        <Select
          label="Finger to paint"
          hideLabel
          value={finger}
          options={FINGER_OPTIONS}
          onChange={onFinger}
        />
      )}
      <Switch label="Both halves alike" on={alike} onChange={setAlike} />
      <span className={panel.rowOfButtons}>
        <IconButton
          label={back === undefined ? 'Nothing to undo on this board' : `Undo: ${back.title}`}
          disabled={back === undefined}
          onClick={undo}
        >
          <UndoIcon />
        </IconButton>
        <IconButton
          label={forth === undefined ? 'Nothing to redo on this board' : `Redo: ${forth.title}`}
          disabled={forth === undefined}
          onClick={redo}
        >
          <RedoIcon />
        </IconButton>
      </span>
    </div>
  );
}
