import {
  DndContext,
  type DragEndEvent,
  MouseSensor,
  pointerWithin,
  TouchSensor,
  useSensor,
  useSensors,
} from '@dnd-kit/core';
import { type ReactNode, useState } from 'react';
import { entryWords } from '../../../../core/findings/entry-words.ts';
import { freshId } from '../../../../core/keymap/fresh-id.ts';
import { LIMITS } from '../../../../core/keymap/limits.ts';
import { useAnalysis } from '../../../../store/analysis.ts';
import { useBench } from '../../../../store/bench.ts';
import { usePageDialog } from '../../../../store/page.ts';
import { Button } from '../../../widgets/button.tsx';
import { FillDialog } from '../fill/fill-dialog.tsx';
import { TimingDialog } from '../timing/timing-dialog.tsx';
import { LayerDialog } from './layer-dialog.tsx';
import { placeOfDrop } from './layer-order.ts';
import { LayerSheet } from './layer-sheet.tsx';
import styles from './layers.module.css';

/** A press that hardly moves is a click; a finger must rest first, so that it can still scroll. */
const MOUSE = { activationConstraint: { distance: 5 } };
const TOUCH = { activationConstraint: { delay: 180, tolerance: 8 } };
const BY_KEYS = { draggable: 'Alt with arrow up or down moves this layer.' };

/** The layers as sheets of a stack, the highest on top as it lies; each says how one gets in. */
export function LayerStack() {
  const keymap = useBench((bench) => bench.keymap);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const edit = useBench((bench) => bench.edit);
  const showLayer = useBench((bench) => bench.showLayer);
  const { facts } = useAnalysis();
  const fill = usePageDialog('fill');
  const timing = usePageDialog('timing');
  const change = usePageDialog('layer');
  const [spoken, say] = useState('');
  const addLayer = () => {
    const id = freshId('layer', new Set(keymap.layers.map((layer) => layer.id)));
    edit({ edit: 'add-layer', layer: { id, name: `Layer ${keymap.layers.length}`, places: {} } });
    showLayer(id);
    change.open();
  };
  return (
    <section className={styles.stack} aria-label="Layers">
      <div className={styles.bar}>
        <h2>Layers</h2>
        <Button tone="quiet" onClick={fill.open}>
          Fill…
        </Button>
        <Button tone="quiet" onClick={timing.open}>
          Timing…
        </Button>
        <Button tone="quiet" disabled={keymap.layers.length >= LIMITS.layers} onClick={addLayer}>
          Add a layer
        </Button>
      </div>
      <Sorting>
        <ol className={styles.sheets}>
          {keymap.layers
            .map((layer, number) => (
              <LayerSheet
                key={layer.id}
                layer={layer}
                number={number}
                inFront={layer.id === frontLayer}
                entry={facts.grid.layerNumber.has(layer.id) ? entryWords(facts, layer.id) : null}
                onChange={change.open}
                say={say}
              />
            ))
            .reverse()}
        </ol>
      </Sorting>
      <output className={styles.spoken}>{spoken}</output>
      {fill.isOpen && <FillDialog onClose={fill.close} />}
      {timing.isOpen && <TimingDialog onClose={timing.close} />}
      {change.isOpen && <LayerDialog onClose={change.close} />}
    </section>
  );
}

/** Lets sheets be dragged to another place of the stack; a drag of theirs is none of the desk's. */
function Sorting({ children }: { readonly children: ReactNode }) {
  const sensors = useSensors(useSensor(MouseSensor, MOUSE), useSensor(TouchSensor, TOUCH));
  const ended = ({ active, over }: DragEndEvent) => {
    const { keymap, edit } = useBench.getState();
    if (over === null || over.id === active.id) return;
    const layer = String(active.id);
    edit({ edit: 'move-layer', layer, to: placeOfDrop(keymap, String(over.id)) });
  };
  return (
    <DndContext
      sensors={sensors}
      collisionDetection={pointerWithin}
      accessibility={{ screenReaderInstructions: BY_KEYS }}
      onDragEnd={ended}
    >
      {children}
    </DndContext>
  );
}
