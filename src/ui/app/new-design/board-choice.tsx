import { useMemo } from 'react';
import { boardExtent } from '../../../core/board/caps.ts';
import { READY_BOARDS } from '../../../core/board/ready-boards.ts';
import { Choice } from '../../widgets/choice.tsx';
import { BoardPicture } from '../board-picture.tsx';
import { boardOf } from './answers.ts';

/** The ready boards as small pictures, all to one scale, at the chosen pitch. */
export function BoardChoice({
  board,
  pitch,
  onChange,
}: {
  readonly board: string;
  readonly pitch: string;
  readonly onChange: (board: string) => void;
}) {
  const boards = useMemo(() => READY_BOARDS.map(({ id }) => boardOf(id, pitch)), [pitch]);
  const widest = Math.max(...boards.map(boardExtent).map(({ minX, maxX }) => maxX - minX));
  const options = READY_BOARDS.map(({ id, title }, index) => {
    const drawn = boards[index];
    return {
      value: id,
      label: title,
      picture: drawn === undefined ? null : <BoardPicture board={drawn} mmWide={widest} />,
    };
  });
  return <Choice label="Keys" look="cards" value={board} options={options} onChange={onChange} />;
}
