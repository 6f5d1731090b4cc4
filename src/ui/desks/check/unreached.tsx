import { stepGives, stepName } from '../../../core/check/step-words.ts';
import type { Unreached as UnreachedThing } from '../../../core/check/steps.ts';
import { layerWords } from '../../../core/keymap/action-words.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import styles from './check.module.css';

/** What the design has and gives no way to, by layer: nothing of it can be pressed on any board. */
export function Unreached({ room }: { readonly room: CheckRoom }) {
  const things = room.plan?.unreached ?? [];
  if (things.length === 0) return null;
  const source = { keymap: room.keymap, host: room.known.host };
  const titles = [...new Set(things.map((thing) => titleOf(room, thing)))];
  return (
    <section aria-label="No way to it">
      <h2 className={styles.heading}>
        No way to it <span className={styles.quiet}>{things.length}</span>
      </h2>
      <p className={styles.quiet}>
        The design has these and no way to press them. That is no fault of the board: see the findings on the
        design desk.
      </p>
      {titles.map((title) => {
        const own = things.filter((thing) => titleOf(room, thing) === title);
        return (
          <Disclosure key={title} title={title} badge={<span className={styles.quiet}>{own.length}</span>}>
            <ul className={styles.things}>
              {own.map((thing) => (
                <li key={thing.id}>
                  {stepGives(source, thing)} <span className={styles.quiet}>{stepName(source, thing)}</span>
                </li>
              ))}
            </ul>
          </Disclosure>
        );
      })}
    </section>
  );
}

function titleOf({ keymap }: CheckRoom, { at }: UnreachedThing): string {
  return 'chord' in at ? 'Chords' : layerWords(keymap, at.place.layer);
}
