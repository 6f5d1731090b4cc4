import { useMemo } from 'react';
import type { Checked } from '../../../core/check/given-keys.ts';
import { checkReport } from '../../../core/check/report.ts';
import type { SightKind } from '../../../core/check/sight.ts';
import { walkOf } from '../../../core/check/walk.ts';
import { type CheckRoom, useCheck, useCheckRoom } from '../../../store/check/check.ts';
import { resultsFor } from '../../../store/check/kept-check.ts';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import styles from './check.module.css';
import { ComputerSide } from './computer-side.tsx';
import { ReportView } from './report-view.tsx';
import { AskingStage, CheckBoard, RestingStage } from './stage.tsx';
import { StepsSide } from './steps-side.tsx';
import { useCheckRun } from './use-check-run.ts';

/** The check desk: every key of every layer and every chord is pressed on the real board, one after the other. */
export function CheckDesk() {
  const room = useCheckRoom();
  const { check, failed, startOver, locked, lockable, byEye, walk, results, run } = useDesk(room);
  const checked = useMemo(
    () =>
      walk.flatMap((step): Checked[] => {
        const result = results.get(step.id);
        return result === undefined ? [] : [{ step, result }];
      }),
    [walk, results],
  );
  const of = (verdict: string) => checked.filter(({ result }) => result.verdict === verdict).length;
  const tally = { pressed: checked.length, all: walk.length, wrong: of('wrong'), silent: of('silent') };
  const asked = run.active ? run.step : null;
  const report = useMemo(() => {
    if (room.plan === null || asked !== null || checked.length === 0) return null;
    const at = new Date(check.begunAt).toISOString();
    return checkReport(room.keymap, room.known.host, room.plan, results, at, seenKinds(locked));
  }, [room, asked, checked, check.begunAt, results, locked]);
  return (
    <DeskFrame
      left={<StepsSide room={room} walk={walk} results={results} asked={asked?.id ?? null} />}
      leftLabel="To press"
      leftBadge={walk.length - checked.length === 0 ? null : walk.length - checked.length}
      main={
        <div className={styles.main} data-active={asked !== null}>
          {room.plan === null ? (
            <p className={styles.stage} role="status">
              {room.failed ? 'What there is to press could not be worked out.' : 'Working out what to press…'}
            </p>
          ) : asked === null ? (
            <RestingStage room={room} walk={walk} tally={tally} run={run} startOver={startOver} />
          ) : (
            <AskingStage room={room} step={asked} run={run} tally={tally} />
          )}
          {failed !== null && (
            <p role="alert">
              The check could not be written: {failed}. It is not lost while this page stays open.
            </p>
          )}
          <CheckBoard room={room} step={asked} checked={checked} />
          {report !== null && <ReportView report={report} />}
        </div>
      }
      right={
        <ComputerSide
          room={room}
          locked={locked}
          lockable={lockable}
          byEye={byEye}
          enterFullScreen={run.enterFullScreen}
        />
      }
      rightLabel="Computer, by eye"
    />
  );
}

/** What is pressed, in which order, and what came of it so far. */
function useDesk(room: CheckRoom) {
  const check = useCheck((state) => state.check);
  const failed = useCheck((state) => state.failed);
  const startOver = useCheck((state) => state.startOver);
  const steps = room.plan?.steps ?? NONE;
  const results = useMemo(() => resultsFor(check, steps), [check, steps]);
  const seen = useMemo(() => walkOf(room.keymap, steps.filter(ofKind('seen'))), [room.keymap, steps]);
  const lockable = useMemo(() => steps.filter(ofKind('seen-when-locked')), [steps]);
  const byEye = useMemo(() => steps.filter(ofKind('by-eye')), [steps]);
  const whole = useMemo(() => [...seen, ...walkOf(room.keymap, lockable)], [seen, lockable, room.keymap]);
  const run = useCheckRun(seen, whole, results);
  const { locked } = run;
  return { check, failed, startOver, locked, lockable, byEye, walk: locked ? whole : seen, results, run };
}

const NONE: readonly never[] = [];

const ofKind =
  (kind: SightKind) =>
  ({ sight }: { readonly sight: { readonly kind: SightKind } }) =>
    sight.kind === kind;

function seenKinds(locked: boolean): ReadonlySet<SightKind> {
  return new Set(locked ? ['seen', 'seen-when-locked'] : ['seen']);
}
