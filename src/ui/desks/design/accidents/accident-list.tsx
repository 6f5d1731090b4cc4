import type { Overview } from '../../../../core/typist/overview.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { Button } from '../../../widgets/button.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import {
  type AccidentRow,
  accidentRows,
  leftOutInWords,
  litByOffenders,
  totalInWords,
} from './accident-rows.ts';
import styles from './accidents.module.css';

/** So many stand there at once. */
const SHOWN = 6;
const ALL = 'Everything that goes off';

/** Of a design that types less of the text than the rest, figures would say nothing. Our choice. */
const MOST_LEFT_OUT = 0.999;
const NOTHING_TYPED =
  'Nothing of this text can be typed on this design yet, so there is nothing to estimate. Bind some letters first.';

/** The total, and what goes off, the worst first; each can be shown on the board and opened. */
export function AccidentList({
  overview,
  untypable,
}: {
  readonly overview: Overview;
  /** Share of the text's characters. */
  readonly untypable: number;
}) {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const light = useBench((bench) => bench.light);
  const isLit = useBench((bench) => bench.lit?.why === ALL);
  const source = { keymap, host };
  if (untypable > MOST_LEFT_OUT) return <p>{NOTHING_TYPED}</p>;
  const rows = accidentRows(overview, source);
  const [figure, rest, wait] = totalInWords(overview);
  const offenders = overview.offences
    .filter(({ misfires }) => (misfires ?? 0) >= 0.05)
    .map(({ offender }) => offender);
  return (
    <section aria-label="Accidents of this design" className={styles.section}>
      <p>
        <strong className={styles.figure} data-testid="total-misfires">
          {figure}
        </strong>{' '}
        {rest}
      </p>
      <p className={styles.quiet}>
        {wait}
        {untypable > 0 && ` ${leftOutInWords(untypable)}`}
      </p>
      {rows.length > 0 && (
        <div>
          <Button
            tone="quiet"
            aria-pressed={isLit}
            onClick={() => light(isLit ? null : litByOffenders(offenders, ALL, source))}
          >
            Show all on the board
          </Button>
        </div>
      )}
      <Rows rows={rows.slice(0, SHOWN)} />
      {rows.length > SHOWN && (
        <Disclosure title={<span className={styles.quiet}>and {rows.length - SHOWN} more</span>}>
          <Rows rows={rows.slice(SHOWN)} />
        </Disclosure>
      )}
    </section>
  );
}

function Rows({ rows }: { readonly rows: readonly AccidentRow[] }) {
  return (
    <ul className={styles.rows}>
      {rows.map((row) => (
        <Row key={row.id} row={row} />
      ))}
    </ul>
  );
}

/** One of them: looking at it lights it up, pressing it opens its card. */
function Row({ row: { id, name, figures, at, share, lit, card } }: { readonly row: AccidentRow }) {
  const { light, openCardOf } = useBench.getState();
  const look = () => light(lit);
  const away = () => light(null);
  return (
    <li>
      <button
        type="button"
        className={styles.row}
        data-accident={id}
        onClick={() => openCardOf(card)}
        onFocus={look}
        onBlur={away}
        onPointerEnter={look}
        onPointerLeave={away}
      >
        <span className={styles.name}>{name}</span>
        <span className={styles.bar} aria-hidden="true">
          <span style={{ width: `${Math.max(1, 100 * share)}%` }} />
        </span>
        <span className={styles.quiet}>
          {figures}
          {at !== '' && `; ${at}`}
        </span>
      </button>
    </li>
  );
}
