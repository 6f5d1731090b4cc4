import { useState } from 'react';
import { useStore } from 'zustand';
import { measured } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { MeasureDialog } from './measure-dialog.tsx';

/** The way to figures of one's own. */
export function MeasureLine() {
  const [isOpen, setOpen] = useState(false);
  const known = useStore(measured, ({ typist }) => typist);
  return (
    <>
      <Button onClick={() => setOpen(true)}>{known === null ? 'Measure me…' : 'My own figures…'}</Button>
      {isOpen && <MeasureDialog onClose={() => setOpen(false)} />}
    </>
  );
}
