import { useEffect, useState } from 'react';
import { CAUTION } from '../../../../core/base/care.ts';
import { actionWords } from '../../../../core/keymap/action-words.ts';
import { freshId } from '../../../../core/keymap/fresh-id.ts';
import { chordsOf } from '../../../../core/keymap/timing.ts';
import type { Action, LayerId } from '../../../../core/keymap/types.ts';
import { USUAL_WISH } from '../../../../core/typist/suggest-chords.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { chordSearch } from '../../../../store/suggest/chord-search.ts';
import { ActionEditor } from '../../../board/cards/action-editor.tsx';
import { Button } from '../../../widgets/button.tsx';
import { CheckList } from '../../../widgets/check-list.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { Slider } from '../../../widgets/slider.tsx';
import { Candidates } from './candidates.tsx';
import styles from './suggest.module.css';
import { candidateRows, HANDS, lookedAt, SIZES, type SizeChoice, sizesOf } from './suggest-words.ts';
import { useChordSearch } from './use-chord-search.ts';

/** Finds a chord for an action: what is wished for, the best candidates, each tried on the board and taken. */
export function SuggestChord() {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const [action, setAction] = useState<Action | null>(null);
  const [size, setSize] = useState<SizeChoice>('2-4');
  const [hands, setHands] = useState(USUAL_WISH.hands);
  const [windowMs, setWindow] = useState(USUAL_WISH.windowMs);
  const [chosen, setLayers] = useState<readonly LayerId[] | null>(null);
  const layers = liveLayers(
    keymap.layers.map(({ id }) => id),
    chosen,
  );
  const state = useChordSearch(keymap, { keys: sizesOf(size), hands, windowMs, layers }, action !== null);
  return (
    <div className={styles.panel}>
      <ActionEditor
        keymap={keymap}
        host={host}
        side="tap"
        action={action ?? undefined}
        noneWords="choose what it gives"
        onNone={() => setAction(null)}
        onChange={setAction}
      />
      <Choice label="Keys" value={size} options={SIZES} onChange={setSize} />
      <Choice label="Over" value={hands} options={HANDS} onChange={setHands} />
      <Disclosure title="Window and layers">
        <div className={styles.panel}>
          <Slider
            label="Window"
            unit="ms"
            min={10}
            max={200}
            step={1}
            value={windowMs}
            onCommit={setWindow}
          />
          <CheckList
            label="Live on"
            values={layers}
            options={keymap.layers.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(next) => next.length > 0 && setLayers(next)}
          />
        </div>
      </Disclosure>
      {action !== null && <Found action={action} {...state} />}
    </div>
  );
}

/** The chosen layers that there still are; the base layer where none is chosen or left. */
function liveLayers(all: readonly LayerId[], chosen: readonly LayerId[] | null): readonly LayerId[] {
  const left = all.filter((id) => chosen?.includes(id) === true);
  return left.length > 0 ? left : all.slice(0, 1);
}

/** What the search has come to. */
function Found({ action, running, found, failed }: ReturnType<typeof useChordSearch> & { action: Action }) {
  const keymap = useBench((bench) => bench.keymap);
  const [tried, setTried] = useState(-1);
  const { light, edit, notify } = useBench.getState();
  // Other candidates than those that were looked through: nothing of them is on the board any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of what was found that counts
  useEffect(() => {
    setTried(-1);
    return () => useBench.getState().light(null);
  }, [found]);
  const title = actionWords(keymap, action);
  // What was found for the design as it was before an edit is still to be seen, and no more than that.
  const isOfToday = found?.of.keymap === keymap;
  const rows =
    found === null || found.of.keymap.board !== keymap.board ? [] : candidateRows(keymap, found.result);
  const tryOut = (at: number) => {
    const row = rows[at];
    setTried(at);
    if (row !== undefined)
      light({ why: `${row.name} for ${title}`, keys: row.keys, chords: [], layers: [], order: [] });
  };
  const take = (at: number) => {
    const row = rows[at];
    if (row === undefined || found === null || !isOfToday) return;
    light(null);
    setTried(-1);
    const { windowMs, layers } = found.of.wish;
    const ids = chordsOf(keymap).map(({ id }) => id);
    edit({ edit: 'add-chord', chord: { id: freshId('c', ids), keys: row.keys, windowMs, layers, action } });
    const isMade = useBench.getState().keymap !== keymap;
    if (isMade) notify({ tone: 'done', text: `${row.name} gives ${title}.`, canUndo: true });
  };
  return (
    <>
      {running !== null && (
        <div className={styles.progress}>
          <progress aria-label="Sets of keys looked at" max={running.all} value={running.considered} />
          <Button tone="quiet" onClick={() => chordSearch.getState().cancel()}>
            Cancel
          </Button>
        </div>
      )}
      {failed !== null && <p role="alert">{failed}</p>}
      {found !== null && (
        <>
          <p className={styles.quiet} role="status">
            {lookedAt(found.result, title)}
          </p>
          {rows.length > 0 && (
            <>
              <p className={styles.quiet}>Arrow keys or a click try one on the board, Enter takes it.</p>
              <Candidates
                isOld={!isOfToday}
                board={keymap.board}
                rows={rows}
                tried={tried}
                onTry={tryOut}
                onTake={take}
              />
              <Button
                className={styles.take}
                tone="accent"
                disabled={tried < 0 || !isOfToday}
                onClick={() => take(tried)}
              >
                Take this chord
              </Button>
            </>
          )}
          <p className={styles.quiet}>
            What comfort, conflicts and likeness weigh against misfires is judgement. {CAUTION}
          </p>
        </>
      )}
    </>
  );
}
