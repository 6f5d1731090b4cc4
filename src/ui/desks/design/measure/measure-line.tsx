import { useStore } from 'zustand';
import { usePageDialog } from '../../../../store/page.ts';
import { measured } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { MeasureDialog } from './measure-dialog.tsx';

/** The way to figures of one's own. */
export function MeasureLine() {
  const { isOpen, open, close } = usePageDialog('measure');
  const known = useStore(measured, ({ typist }) => typist);
  return (
    <>
      <Button onClick={open}>{known === null ? 'Measure me…' : 'My own figures…'}</Button>
      {isOpen && <MeasureDialog onClose={close} />}
    </>
  );
}
