import { useCallback, useMemo } from 'react';
import type { Checked } from '../../../core/check/given-keys.ts';
import { checkReport } from '../../../core/check/report.ts';
import type { SightKind } from '../../../core/check/sight.ts';
import { walkOf } from '../../../core/check/walk.ts';
import { useBench } from '../../../store/bench.ts';
import { type CheckRoom, useCheck, useCheckRoom, useOpenCheck } from '../../../store/check/check.ts';
import { keptResult, looksFor, resultsFor } from '../../../store/check/kept-check.ts';
import { ComputerQuestion } from '../../board/computer/computer-question.tsx';
import { useComputer } from '../../board/computer/use-computer.ts';
import { Elsewhere } from '../../board/elsewhere.tsx';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import { DeskStage } from '../../widgets/desk-stage.tsx';
import { AskingStage, AwaitingStage } from './asking-stage.tsx';
import { ByEye } from './by-eye.tsx';
import styles from './check.module.css';
import { CheckBoard } from './check-board.tsx';
import { ComputerSide } from './computer-side.tsx';
import { KeptByBrowser } from './kept-by-browser.tsx';
import { ReportView } from './report-view.tsx';
import { RestingStage } from './resting-stage.tsx';
import { StepsSide } from './steps-side.tsx';
import { useCheckRun } from './use-check-run.ts';

/** The check desk: every key of every layer and every chord is pressed on the real board, one after the other. */
export function CheckDesk() {
  useOpenCheck();
  const designId = useBench((bench) => bench.designId);
  // Another design is another check: nothing of a run is taken over.
  return <Desk key={designId} />;
}

function Desk() {
  const desk = useDesk(useCheckRoom());
  const { room, run, walk, results, checked, readOnly, lockable, failed } = desk;
  const asked = run.active ? run.step : null;
  const report = useReport(desk);
  return (
    <DeskFrame
      left={<StepsSide room={room} walk={walk} results={results} asked={asked?.id ?? null} />}
      leftLabel="To press"
      leftBadge={walk.length - checked.length === 0 ? null : walk.length - checked.length}
      isAtRest={!run.active && !run.awaitsLock}
      main={
        <div className={styles.main}>
          <Stage {...desk} />
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
        <div className={styles.side}>
          <ComputerSide room={room} computer={desk.computer} />
          <KeptByBrowser steps={lockable} run={run} readOnly={readOnly} />
          <ByEye room={room} steps={desk.byEye} looks={desk.looks} readOnly={readOnly} />
        </div>
      }
      rightLabel="Computer, by eye"
    />
  );
}

type DeskState = ReturnType<typeof useDesk>;

/** What stands over the board. */
function Stage(desk: DeskState) {
  const { room, walk, run, tally, byEye } = desk;
  if (room.plan === null) {
    const words = room.failed
      ? 'What there is to press could not be worked out.'
      : 'Working out what to press…';
    return (
      <DeskStage label="Check">
        <p role="status">{words}</p>
      </DeskStage>
    );
  }
  if (desk.readOnly) return <Elsewhere label="Check" todo="Check it" />;
  if (desk.computer.asking)
    return <ComputerQuestion computer={desk.computer} title={room.known.table.title} />;
  if (run.awaitsLock) return <AwaitingStage run={run} />;
  if (run.active && run.step !== null)
    return <AskingStage room={room} step={run.step} run={run} tally={tally} />;
  return walk.length === 0 ? <NothingToPress someByEye={byEye.length > 0} /> : <RestingStage {...desk} />;
}

function NothingToPress({ someByEye }: { readonly someByEye: boolean }) {
  return (
    <DeskStage label="Check">
      <h2>Nothing to press yet</h2>
      <p>
        {someByEye
          ? 'All that this design does can only be checked by eye: it is listed at the right.'
          : 'This design has nothing on its keys that a press could show. Place something on the design desk first.'}
      </p>
    </DeskStage>
  );
}

/** What is pressed, in which order, and what came of it so far. */
function useDesk(room: CheckRoom) {
  const computer = useComputer(room.known);
  const check = useCheck((state) => state.check);
  const failed = useCheck((state) => state.failed);
  const startOver = useCheck((state) => state.startOver);
  const noteKept = useCheck((state) => state.note);
  const readOnly = useBench((bench) => bench.readOnly);
  const { keymap, plan } = room;
  const steps = plan?.steps ?? NONE;
  const results = useMemo(() => resultsFor(check, steps), [check, steps]);
  const looks = useMemo(() => looksFor(check, steps), [check, steps]);
  const seen = useMemo(() => walkOf(keymap, steps.filter(ofKind('seen'))), [keymap, steps]);
  const kept = useMemo(() => walkOf(keymap, steps.filter(ofKind('seen-when-locked'))), [keymap, steps]);
  const note = useCallback<Parameters<typeof useCheckRun>[0]['note']>(
    (step, result) => noteKept(keptResult(step, result)),
    [noteKept],
  );
  const run = useCheckRun({ seen, lockable: kept, results, readOnly, note });
  const { locked } = run;
  // A lock that is over by now does not undo what was pressed under it.
  const lockable = useMemo(
    () => kept.filter(({ id }) => !locked && !results.has(id)),
    [kept, locked, results],
  );
  const walk = useMemo(
    () => [...seen, ...kept.filter((step) => !lockable.includes(step))],
    [seen, kept, lockable],
  );
  const byEye = useMemo(() => [...steps.filter(ofKind('by-eye')), ...lockable], [steps, lockable]);
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
  return {
    room,
    computer,
    check,
    failed,
    startOver,
    readOnly,
    lockable,
    byEye,
    looks,
    walk,
    checked,
    tally,
    results,
    run,
  };
}

/** The report of what was pressed and looked at so far; null while a step is asked for, and where nothing was. */
function useReport({ room, check, results, looks, run }: DeskState) {
  const { active, locked } = run;
  return useMemo(() => {
    if (room.plan === null || active || results.size + looks.size === 0) return null;
    const times = { begunAt: timeText(check.begunAt), lastAt: timeText(check.lastAt) };
    const seen = new Set<SightKind>(locked ? ['seen', 'seen-when-locked'] : ['seen']);
    return checkReport(room.keymap, room.known.host, room.plan, { ...times, results, byEye: looks }, seen);
  }, [room, active, check, results, looks, locked]);
}

const timeText = (ms: number) => new Date(ms).toISOString();

const NONE: readonly never[] = [];

const ofKind =
  (kind: SightKind) =>
  ({ sight }: { readonly sight: { readonly kind: SightKind } }) =>
    sight.kind === kind;
