import { useEffect, useState } from 'react';
import { type DemoDesign, loadDemoDesigns } from '../../../store/demo-designs.ts';
import { useDesigns } from '../../../store/keeping/use-designs.ts';
import { BoardPicture } from '../board-picture.tsx';
import styles from './demo-gallery.module.css';

/** The demonstrations as tiles; opening one keeps a copy of it, so that it can be changed freely. */
export function DemoGallery({ onOpened }: { readonly onOpened: () => void }) {
  const [demos, setDemos] = useState<readonly DemoDesign[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  const addDesign = useDesigns((state) => state.addDesign);
  useEffect(() => {
    loadDemoDesigns().then(setDemos, (error: unknown) => setProblem(String(error)));
  }, []);
  if (problem !== null) return <p>{problem}</p>;
  return (
    <ul className={styles.tiles}>
      {demos.map(({ id, keymap }) => (
        <li key={id}>
          <button
            type="button"
            className={styles.tile}
            onClick={() => {
              onOpened();
              void addDesign(keymap);
            }}
          >
            <BoardPicture board={keymap.board} />
            <span className={styles.name}>{keymap.name}</span>
            <span className={styles.notes}>{firstSentence(keymap.notes ?? '')}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function firstSentence(notes: string): string {
  return /^[^\n]*?[.!?](?=\s|$)/.exec(notes)?.[0] ?? notes.split('\n')[0] ?? '';
}
