import { Component, type ReactNode } from 'react';
import { useBench } from '../../store/bench.ts';
import { keymapFile } from '../board/export/export-files.ts';
import { Button } from '../widgets/button.tsx';
import { saveFile } from '../widgets/save-file.ts';
import styles from './error-boundary.module.css';

interface Props {
  readonly children: ReactNode;
}

interface State {
  readonly error: Error | null;
}

/**
 * Stands in for a part of the page that broke: says what is safe and what can be done, and gives the design out.
 */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { error: null };

  static getDerivedStateFromError(error: unknown): State {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return <Broken error={error} retry={() => this.setState({ error: null })} />;
  }
}

function Broken({ error, retry }: { readonly error: Error; readonly retry: () => void }) {
  const { keymap, past, undo } = useBench.getState();
  const takeBack = () => {
    undo();
    retry();
  };
  return (
    <div className={styles.broken} role="alert">
      <h1>Something on this page broke</h1>
      <p>
        The design is kept in this browser up to the last change. Taking the last change back, or loading the
        page again, usually helps; the design can also be saved as a file first.
      </p>
      <pre className={styles.reason}>{error.message}</pre>
      <div className={styles.ways}>
        {past.length > 0 && (
          <Button tone="accent" onClick={takeBack}>
            Undo the last change
          </Button>
        )}
        <Button onClick={retry}>Try again</Button>
        <Button onClick={() => location.reload()}>Load the page again</Button>
        <Button onClick={() => saveFile(keymapFile(keymap))}>Save the design as a file</Button>
      </div>
    </div>
  );
}
