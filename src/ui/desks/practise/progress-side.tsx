import { useMemo, useState } from 'react';
import { curveOf, forecastOf } from '../../../core/practice/forecast.ts';
import { groupOfText, NEED_GROUPS, type NeedGroup } from '../../../core/practice/groups.ts';
import type { Session } from '../../../core/practice/session.ts';
import { exportPractice } from '../../../store/practice/export-practice.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import { Button } from '../../widgets/button.tsx';
import { saveFile } from '../../widgets/save-file.ts';
import { Select } from '../../widgets/select.tsx';
import { Care } from './care.tsx';
import { CurvePlot } from './curve-plot.tsx';
import { ErrorsPlot, type SessionErrors } from './errors-plot.tsx';
import { forecastWords } from './plot-words.ts';
import { GROUP_TITLES } from './practise-words.ts';
import styles from './progress-side.module.css';

/** Right of the board: how it goes, group by group, what comes of it, and what to mind. */
export function ProgressSide({ designName }: { readonly designName: string }) {
  const ended = usePractice((state) => state.ended);
  const current = usePractice((state) => state.current);
  const failed = usePractice((state) => state.failed);
  const sessions = useMemo(() => (current === null ? ended : [...ended, current]), [ended, current]);
  return (
    <div className={styles.side}>
      {failed !== null && (
        <p className={styles.failed} role="alert">
          Practice could not be written: {failed}. It is not lost while this page stays open.
        </p>
      )}
      <Curves sessions={sessions} />
      <Care />
      <Keeping designName={designName} sessions={sessions} />
    </div>
  );
}

function Curves({ sessions }: { readonly sessions: readonly Session[] }) {
  const practised = useMemo(() => practisedGroups(sessions), [sessions]);
  const [wished, wish] = useState<NeedGroup | null>(null);
  const group = wished ?? practised[0] ?? 'letters';
  const now = Date.now();
  const points = useMemo(() => curveOf(sessions, group), [sessions, group]);
  const errors = useMemo(() => errorsOf(sessions, group), [sessions, group]);
  const forecast = forecastOf(points, now);
  const title = GROUP_TITLES[group];
  return (
    <section className={styles.section} aria-label="Progress">
      <Select
        label="Progress of"
        value={group}
        options={NEED_GROUPS.map((value) => ({ value, label: GROUP_TITLES[value] }))}
        onChange={wish}
      />
      {errors.length === 0 ? (
        <p className={styles.quiet}>
          Nothing of these practised yet. Times and errors stand here after the first session.
        </p>
      ) : (
        <>
          <figure>
            <figcaption className={styles.caption}>
              Time for one press, ms; each point is ten presses
            </figcaption>
            {points.length === 0 ? (
              <p className={styles.quiet}>Fewer than ten timed presses so far.</p>
            ) : (
              <CurvePlot points={points} forecast={forecast} title={title} now={now} />
            )}
          </figure>
          <p className={styles.quiet} data-testid="forecast">
            {forecastWords(forecast)}
          </p>
          <figure>
            <figcaption className={styles.caption}>Wrong at first, %, session by session</figcaption>
            <ErrorsPlot sessions={errors} title={title} />
          </figure>
        </>
      )}
    </section>
  );
}

/** The groups that were practised, the one with the most tries first. */
function practisedGroups(sessions: readonly Session[]): readonly NeedGroup[] {
  const tries = new Map<NeedGroup, number>();
  for (const { need } of sessions.flatMap(({ attempts }) => attempts)) {
    const group = groupOfText(need);
    if (group !== null) tries.set(group, (tries.get(group) ?? 0) + 1);
  }
  return [...tries].sort(([, one], [, other]) => other - one).map(([group]) => group);
}

function errorsOf(sessions: readonly Session[], group: NeedGroup): readonly SessionErrors[] {
  return sessions.flatMap(({ startedAt, attempts }) => {
    const own = attempts.filter(({ need }) => groupOfText(need) === group);
    const wrong = own.filter(({ right }) => !right).length;
    return own.length === 0 ? [] : [{ at: startedAt, tries: own.length, wrong }];
  });
}

function Keeping({
  designName,
  sessions,
}: {
  readonly designName: string;
  readonly sessions: readonly Session[];
}) {
  const forget = usePractice((state) => state.forget);
  const designId = usePractice((state) => state.designId);
  const [isAsking, ask] = useState(false);
  if (sessions.every(({ attempts }) => attempts.length === 0)) return null;
  const save = () => {
    const text = exportPractice(designName, sessions);
    saveFile({ name: 'practice-log.json', type: 'application/json', text });
  };
  return (
    <section className={styles.section} aria-label="Kept practice">
      <p className={styles.quiet}>Practice is kept in this browser only, under this design.</p>
      <div className={styles.buttons}>
        <Button onClick={save}>Export the practice</Button>
        {isAsking ? (
          <>
            <Button
              tone="danger"
              onClick={() => {
                ask(false);
                if (designId !== null) void forget(designId);
              }}
            >
              Delete all of it
            </Button>
            <Button tone="quiet" onClick={() => ask(false)}>
              Keep it
            </Button>
          </>
        ) : (
          <Button tone="quiet" onClick={() => ask(true)}>
            Delete…
          </Button>
        )}
      </div>
    </section>
  );
}
