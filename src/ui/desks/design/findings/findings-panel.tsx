import { memo, useRef } from 'react';
import type { Finding, Severity } from '../../../../core/findings/find.ts';
import { findingId } from '../../../../core/findings/finding-id.ts';
import { judgeHands } from '../../../../core/findings/judges-hands.ts';
import { needMissing } from '../../../../core/findings/rules/need-missing.ts';
import { useFindings } from '../../../../store/accidents/use-accidents.ts';
import { Caution } from '../../../board/caution.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { type AlikeFindings, alikeFindings } from './alike-findings.ts';
import { FindingCard } from './finding-card.tsx';
import styles from './findings.module.css';
import { PlaceAll } from './place-all.tsx';
import { TakeMend, useTakeMend } from './take-mend.ts';
import { useNextCard } from './use-next-card.ts';

const HEADINGS: Readonly<Record<Severity, string>> = {
  broken: 'Broken',
  risky: 'Risky',
  note: 'Worth knowing',
};
const SEVERITIES: readonly Severity[] = ['broken', 'risky', 'note'];

/** What the validator has to say, sorted by harm. */
export function FindingsPanel() {
  return <Findings findings={useFindings()} />;
}

/** Drawn anew only with other findings: its panel hears of each edit before they are found. */
const Findings = memo(function Findings({ findings }: { readonly findings: readonly Finding[] }) {
  const panel = useRef<HTMLDivElement>(null);
  const focusing = useNextCard(panel);
  const take = useTakeMend(findings);
  return (
    <TakeMend value={take}>
      <div ref={panel} className={styles.panel} tabIndex={-1} {...focusing}>
        {findings.length === 0 && (
          <p className={styles.none}>
            Nothing stands against this design: every need is reached, and no binding or chord is at odds with
            another.
          </p>
        )}
        {SEVERITIES.map((severity) => (
          <FindingGroup
            key={severity}
            severity={severity}
            findings={findings.filter((finding) => finding.severity === severity)}
          />
        ))}
        {judgeHands(findings) && (
          <div className={styles.none}>
            <Caution />
          </div>
        )}
      </div>
    </TakeMend>
  );
});

function FindingGroup({
  severity,
  findings,
}: {
  readonly severity: Severity;
  readonly findings: readonly Finding[];
}) {
  if (findings.length === 0) return null;
  return (
    <Disclosure
      title={HEADINGS[severity]}
      startOpen={severity !== 'note'}
      badge={<span className={styles.number}>{findings.length}</span>}
    >
      {alikeFindings(findings).map((alike) => (
        <Alike key={alike.rule} alike={alike} />
      ))}
    </Disclosure>
  );
}

/** What one rule has to say, the rest of a long list folded away. */
function Alike({ alike: { rule, shown, folded } }: { readonly alike: AlikeFindings }) {
  const mendable = [...shown, ...folded].filter(({ mends }) => mends.length > 0).length;
  return (
    <div className={styles.alike}>
      {rule === needMissing.id && mendable > 1 && <PlaceAll missing={mendable} />}
      <FindingList findings={shown} />
      {folded.length > 0 && (
        <Disclosure title={<span className={styles.more}>and {folded.length} more like these</span>}>
          <FindingList findings={folded} />
        </Disclosure>
      )}
    </div>
  );
}

function FindingList({ findings }: { readonly findings: readonly Finding[] }) {
  return (
    <ul className={styles.list}>
      {findings.map((finding) => (
        <FindingCard key={findingId(finding)} finding={finding} />
      ))}
    </ul>
  );
}
