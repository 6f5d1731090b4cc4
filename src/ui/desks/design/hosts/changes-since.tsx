import { useMemo } from 'react';
import { type HostChanges, hostChanges } from '../../../../core/coverage/host-changes.ts';
import type { Host } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { type KnownHost, useHostLayout } from '../../../../store/hosts.ts';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { readAlike } from './host-edits.ts';
import { changesSummary, hostTitle, strokeWords } from './host-words.ts';
import styles from './hosts.module.css';
import { NeedGlyphs } from './need-glyphs.tsx';
import { useRoutesOn } from './use-routes-on.ts';

/** What has changed, and the layout that it has changed from. */
export interface Since {
  readonly changes: HostChanges;
  readonly knownBefore: KnownHost;
}

/** What changed for the design from one first host to another; null while a table is on its way, or nothing did. */
export function useChangesSince(before: Host, now: Host): Since | null {
  const keymap = useBench((bench) => bench.keymap);
  const knownBefore = useHostLayout(before);
  const then = useRoutesOn(before).onHost;
  const here = useRoutesOn(now).onHost;
  const alike = readAlike(before, now);
  return useMemo(() => {
    if (alike || then === null || here === null) return null;
    return { changes: hostChanges(keymap, then, here), knownBefore };
  }, [alike, keymap, then, here, knownBefore]);
}

/** "12 characters moved, 2 lost", and which. */
export function ChangesSince({
  since,
  before,
  now,
}: {
  readonly since: Since | null;
  readonly before: Host;
  readonly now: Host;
}) {
  return (
    <section className={styles.section} aria-label="What has changed">
      <h3>What has changed</h3>
      {/* The status is there before it says something, so that it is read out. */}
      <p role="status" className={styles.summary}>
        {since === null
          ? 'Nothing yet: choose another layout or order above, and what moves or is lost stands here.'
          : `${changesSummary(since.changes) ?? 'No character moved, none lost'}, compared with ${hostTitle(before, since.knownBefore)} as it was.`}
      </p>
      {since !== null && <ChangeLists changes={since.changes} before={before} now={now} />}
    </section>
  );
}

function ChangeLists({
  changes: { moved, lost, gained },
  before,
  now,
}: {
  readonly changes: HostChanges;
  readonly before: Host;
  readonly now: Host;
}) {
  return (
    <>
      {lost.length > 0 && (
        <Disclosure title={`Lost (${lost.length})`} startOpen>
          <NeedGlyphs needs={lost} />
        </Disclosure>
      )}
      {gained.length > 0 && (
        <Disclosure title={`Gained (${gained.length})`}>
          <NeedGlyphs needs={gained} />
        </Disclosure>
      )}
      {moved.length > 0 && (
        <Disclosure title={`Moved (${moved.length})`}>
          <div className={styles.tableFrame}>
            <table className={styles.table}>
              <thead>
                <tr>
                  <th scope="col">Character</th>
                  <th scope="col">Was</th>
                  <th scope="col">Is now</th>
                  <th scope="col">Hands</th>
                </tr>
              </thead>
              <tbody>
                {moved.map((one) => (
                  <tr key={one.char}>
                    <th scope="row">{one.char}</th>
                    <td>{strokeWords(one.before, before.system)}</td>
                    <td>{strokeWords(one.after, now.system)}</td>
                    <td>{one.sameHands ? 'as before' : 'other keys'}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </Disclosure>
      )}
    </>
  );
}
