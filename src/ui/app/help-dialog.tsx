import { Dialog } from '../widgets/dialog.tsx';
import styles from './help-dialog.module.css';
import { SHORTCUTS } from './shortcuts.ts';

/** How the page is used, by mouse and by keyboard, and what it is. */
export function HelpDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title="Help" onClose={onClose} width="wide">
      <section className={styles.part}>
        <h3>The way of working</h3>
        <ol className={styles.steps}>
          <li>
            The needs on the left are what you must be able to type. Those that no keys produce yet stand
            first.
          </li>
          <li>
            Drag a need onto a key: its upper part is the tap, its lower part the hold. Or click the need and
            then the key.
          </li>
          <li>
            Click a key to open its card, with all it does on every layer. Select several to make a chord of
            them.
          </li>
          <li>The findings on the right say what does not work yet, and offer a mend where there is one.</li>
          <li>
            Export gives the keymap as a neutral JSON file, and a worksheet to enter it by hand elsewhere.
          </li>
          <li>
            Versions (under Designs) keeps states to compare and to go back to. A link carries the whole
            design in an address; Backup (under More) saves everything that this browser keeps.
          </li>
        </ol>
      </section>
      <section className={styles.part}>
        <h3>By keyboard</h3>
        <table className={styles.keys}>
          <tbody>
            {SHORTCUTS.map(({ keys, does }) => (
              <tr key={keys}>
                <th scope="row">{keys}</th>
                <td>{does}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section className={styles.part}>
        <h3>About</h3>
        <p>
          Handful is a design bench for keyboards with a handful of keys. Designs are kept in this browser and
          nowhere else; nothing is sent away.
        </p>
        <p>
          It reckons with keys and times, not with bodies: if typing hurts, rest, and ask somebody who knows
          about hands.
        </p>
      </section>
    </Dialog>
  );
}
