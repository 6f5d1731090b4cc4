import { writeMeasured } from '../../../../core/typist/measured-file.ts';
import { USUAL_SPEED } from '../../../../core/typist/speed.ts';
import type { MeasuredTypist } from '../../../../store/measured/make-measured.ts';
import { measured, useTypist } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import { saveFile } from '../../../widgets/save-file.ts';

/** What can be done with figures of one's own. */
export function FiguresButtons({
  typist: { file, person },
  onMore,
  onClose,
}: {
  readonly typist: MeasuredTypist;
  readonly onMore: () => void;
  readonly onClose: () => void;
}) {
  const { speed, setSpeed } = useTypist();
  const isUsed = speed === 'measured';
  const forget = () => {
    if (isUsed) setSpeed(USUAL_SPEED);
    void measured.getState().forget();
    onClose();
  };
  const use = () => {
    setSpeed('measured');
    onClose();
  };
  const save = () =>
    saveFile({ name: 'measured-typist.json', type: 'application/json', text: writeMeasured(file) });
  return (
    <>
      <Button tone="danger" onClick={forget}>
        Delete my figures
      </Button>
      <Button onClick={save}>Save as a file</Button>
      <Button tone={person === null ? 'accent' : 'plain'} onClick={onMore}>
        Measure more
      </Button>
      {person !== null && (
        <Button tone="accent" onClick={use}>
          {isUsed ? 'Done' : 'Use them for estimates'}
        </Button>
      )}
    </>
  );
}
