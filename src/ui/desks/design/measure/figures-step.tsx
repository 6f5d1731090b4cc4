import { CAUTION } from '../../../../core/base/care.ts';
import { fingerDwellMs } from '../../../../core/typist/dwells.ts';
import { ratioOfGroup } from '../../../../core/typist/fit-intervals.ts';
import { dwellPlot, intervalPlot, spreadPlot } from '../../../../core/typist/fit-plots.ts';
import { type Person, personAt } from '../../../../core/typist/person.ts';
import type { MeasuredTypist } from '../../../../store/measured/make-measured.ts';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { Histogram } from '../../../widgets/histogram.tsx';
import { IntervalRows } from '../../../widgets/interval-rows.tsx';
import styles from './measure.module.css';
import {
  clockSentence,
  closeSentence,
  figureRows,
  fingerName,
  groupName,
  howLittle,
  missingSentences,
} from './measure-words.ts';

/** What was measured, and the fit over it. */
export function FiguresStep({ typist: { file, fit, person } }: { readonly typist: MeasuredTypist }) {
  const clock = clockSentence(file.clockStepMs);
  return (
    <>
      <dl className={styles.figures}>
        {figureRows(fit).map(({ what, figure, range }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>
              {figure} <span className={styles.range}>{range}</span>
            </dd>
          </div>
        ))}
      </dl>
      {missingSentences(fit).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {clock !== null && <p className={styles.warning}>{clock}</p>}
      {person !== null && <Plots typist={{ file, fit, person }} />}
      <p className={styles.small}>
        {person !== null && `${howLittle(fit.intervals?.alphaMs.count ?? 0)} `}Figures lie between the two
        numbers in 95 of 100 cases: by likelihood ratio for intervals (Wilks 1938), Student’s t for dwell, chi
        squared for chords. It was measured on this keyboard; a split board may feel and time otherwise.{' '}
        {CAUTION}
      </p>
    </>
  );
}

function Plots({ typist: { file, fit, person } }: { readonly typist: MeasuredTypist & { person: Person } }) {
  const intervals = intervalPlot(file, person);
  const sample = personAt(person.parameters.wpm).parameters;
  return (
    <>
      <div className={styles.plots}>
        <Histogram
          title="From one press to the next: bars measured, line fitted"
          unit="ms"
          step={intervals.stepMs}
          counts={intervals.counts}
          expected={intervals.expected}
          summary={closeSentence(intervals)}
        />
        <DwellHistogram file={file} person={person} />
        {file.chords.length > 0 && <SpreadHistogram file={file} person={person} />}
      </div>
      <p className={styles.small}>{closeSentence(intervals)}</p>
      <Disclosure title="By class of letter pair and by finger">
        <div className={styles.tables}>
          <IntervalRows
            title="Intervals over those of any letters; stroke: the sample at your speed"
            otherName="sample"
            rows={(fit.intervals?.ratios ?? []).flatMap((ratio, group) =>
              ratio === null
                ? []
                : [{ ...ratio, name: groupName(group), other: ratioOfGroup(sample, group) }],
            )}
            textOf={(value) => value.toFixed(2)}
          />
          <IntervalRows
            title="How long keys are down, ms; stroke: the sample’s fingers at your mean"
            otherName="sample"
            rows={(fit.dwells?.fingers ?? []).flatMap((mean, finger) =>
              mean === null
                ? []
                : [
                    {
                      ...mean,
                      name: fingerName(finger),
                      other: fingerDwellMs(finger, person.parameters.dwellMeanMs),
                    },
                  ],
            )}
            textOf={(value) => Math.round(value).toString()}
          />
        </div>
      </Disclosure>
    </>
  );
}

type PlotProps = Pick<MeasuredTypist, 'file'> & { readonly person: Person };

function DwellHistogram({ file, person }: PlotProps) {
  const { stepMs, counts, expected } = dwellPlot(file, person);
  return (
    <Histogram
      title="How long a key is down"
      unit="ms"
      step={stepMs}
      counts={counts}
      expected={expected}
      summary={`${file.dwells.length} presses.`}
    />
  );
}

function SpreadHistogram({ file, person }: PlotProps) {
  const { stepMs, counts, expected } = spreadPlot(file, person);
  return (
    <Histogram
      title="First to last key of a chord"
      unit="ms"
      step={stepMs}
      counts={counts}
      expected={expected}
      summary={`${file.chords.length} chords.`}
    />
  );
}
