import { type ReactNode, useState } from 'react';
import { useBench } from '../../../store/bench.ts';
import type { KeptDesign } from '../../../store/keeping/shelf.ts';
import { useDesigns } from '../../../store/keeping/use-designs.ts';
import { Badge } from '../../widgets/badge.tsx';
import { Button } from '../../widgets/button.tsx';
import { CommitField } from '../../widgets/commit-field.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { MenuButton } from '../../widgets/menu.tsx';
import { DemoGallery } from './demo-gallery.tsx';
import styles from './designs-dialog.module.css';
import { timeText } from './time-text.ts';

/** All kept designs, with what can be done to each, and the demonstrations. */
export function DesignsDialog({
  onClose,
  onNew,
  onImport,
}: {
  readonly onClose: () => void;
  readonly onNew: () => void;
  readonly onImport: () => void;
}) {
  const kept = useDesigns((state) => state.designs);
  const importing = () => {
    onClose();
    onImport();
  };
  return (
    <Dialog
      title="Designs"
      width="wide"
      onClose={onClose}
      footer={
        <>
          <Button onClick={importing}>Import a file…</Button>
          <Button tone="accent" onClick={onNew}>
            New design…
          </Button>
        </>
      }
    >
      <section>
        <h3 className={styles.heading}>Kept in this browser</h3>
        <ul>
          {kept.map((design) => (
            <KeptRow key={design.id} design={design} onClose={onClose} />
          ))}
        </ul>
      </section>
      <section>
        <h3 className={styles.heading}>Demonstrations</h3>
        <DemoGallery onOpened={onClose} />
      </section>
    </Dialog>
  );
}

type Doing = 'nothing' | 'renaming' | 'deleting';

function KeptRow({ design, onClose }: { readonly design: KeptDesign; readonly onClose: () => void }) {
  const isOpen = useBench((bench) => bench.designId) === design.id;
  const [doing, setDoing] = useState<Doing>('nothing');
  const { openDesign, duplicate } = useDesigns((state) => state);
  const open = async () => {
    onClose();
    if (!isOpen) await openDesign(design.id);
  };
  const copy = async () => {
    onClose();
    await duplicate(design.id);
  };
  if (doing === 'renaming') return <RenameRow design={design} onDone={() => setDoing('nothing')} />;
  if (doing === 'deleting') return <DeleteRow design={design} onDone={() => setDoing('nothing')} />;
  return (
    <Row>
      <button type="button" className={styles.open} onClick={() => void open()}>
        <span className={styles.name}>{design.name}</span>
        <span className={styles.when}>changed {timeText(design.changedAt, Date.now())}</span>
      </button>
      {isOpen && <Badge tone="accent">open</Badge>}
      <MenuButton
        label={`More for ${design.name}`}
        items={[
          { label: 'Duplicate', onSelect: () => void copy() },
          { label: 'Rename', onSelect: () => setDoing('renaming') },
          { label: 'Delete…', tone: 'danger', onSelect: () => setDoing('deleting') },
        ]}
      >
        <span aria-hidden="true">···</span>
      </MenuButton>
    </Row>
  );
}

function RenameRow({ design, onDone }: { readonly design: KeptDesign; readonly onDone: () => void }) {
  const rename = useDesigns((state) => state.rename);
  return (
    <Row>
      <CommitField
        label={`New name of ${design.name}`}
        hideLabel
        autoFocus
        className={styles.field}
        value={design.name}
        maxLength={80}
        problemOf={(text) => (text === '' ? 'A design needs a name.' : undefined)}
        onCommit={(name) => void rename(design.id, name)}
        onDone={onDone}
      />
    </Row>
  );
}

function DeleteRow({ design, onDone }: { readonly design: KeptDesign; readonly onDone: () => void }) {
  const remove = useDesigns((state) => state.remove);
  return (
    <Row>
      <p className={styles.field}>
        Delete “{design.name}” from this browser for good, with its versions, its practice and its board
        check?
      </p>
      <Button onClick={onDone} autoFocus>
        Keep it
      </Button>
      <Button tone="danger" onClick={() => void remove(design.id).then(onDone)}>
        Delete it
      </Button>
    </Row>
  );
}

function Row({ children }: { readonly children: ReactNode }) {
  return <li className={styles.row}>{children}</li>;
}
