import { wrap } from 'comlink';
import { useEffect, useMemo, useState } from 'react';
import type { Keymap } from '../../core/keymap/types.ts';
import { needsOfKeymap } from '../../core/needs/needs-of.ts';
import { type ChangeRow, changeRows } from '../../core/versions/change-rows.ts';
import { type Comparison, compareKeymaps } from '../../core/versions/compare.ts';
import type { TypingComparison } from '../../core/versions/compare-typing.ts';
import type { Comparing, SentDesign } from '../../workers/compare.worker.ts';
import { type KnownHost, useHost } from '../hosts.ts';
import { useFindList } from '../need-lists.ts';
import { useTypist } from '../typist.ts';

/** What a change does to typing, as far as it is known. */
export type KnownTyping =
  | { readonly state: 'reckoning' }
  | { readonly state: 'done'; readonly typing: TypingComparison }
  | { readonly state: 'failed'; readonly why: string };

/** Two designs compared. */
export interface ComparedDesigns {
  readonly comparison: Comparison;
  readonly rows: readonly ChangeRow[];
  readonly hosts: { readonly before: KnownHost; readonly after: KnownHost };
  readonly typing: KnownTyping;
  /** The text that relearning and accidents are reckoned with, and whether it is the typist's own. */
  readonly text: { readonly title: string; readonly isOwn: boolean };
}

/** Compares two designs: in words at once, and what it does to typing as soon as a worker has reckoned it. */
export function useComparison(before: Keymap, after: Keymap): ComparedDesigns {
  const hosts = { before: useHost(before), after: useHost(after) };
  const [hostBefore, hostAfter] = [hosts.before.host, hosts.after.host];
  const comparison = useMemo(() => compareKeymaps(before, after), [before, after]);
  const rows = useMemo(
    () => changeRows(comparison, { before: hostBefore, after: hostAfter }),
    [comparison, hostBefore, hostAfter],
  );
  const { typed } = useTypist();
  return {
    comparison,
    rows,
    hosts,
    typing: useTyping(before, after, hosts),
    text: { title: typed.title, isOwn: typed.choice === 'own' },
  };
}

const RECKONING: KnownTyping = { state: 'reckoning' };

function useTyping(
  before: Keymap,
  after: Keymap,
  { before: was, after: is }: ComparedDesigns['hosts'],
): KnownTyping {
  const [known, setKnown] = useState<KnownTyping>(RECKONING);
  const findList = useFindList();
  const { typed, person } = useTypist();
  const { counts, why } = typed;
  const isReady = was.state !== 'loading' && is.state !== 'loading';
  useEffect(() => {
    if (counts === null) return setKnown(why === undefined ? RECKONING : { state: 'failed', why });
    if (!isReady) return;
    setKnown(RECKONING);
    const worker = new Worker(new URL('../../workers/compare.worker.ts', import.meta.url), {
      type: 'module',
    });
    const tell = (typing: KnownTyping) => {
      setKnown(typing);
      worker.terminate();
    };
    worker.addEventListener('error', () =>
      tell({ state: 'failed', why: 'The comparison of typing could not be started.' }),
    );
    const sent = (keymap: Keymap, { table }: KnownHost): SentDesign => ({
      keymap,
      table,
      needs: needsOfKeymap(keymap, findList),
    });
    wrap<Comparing>(worker)
      .compare(sent(before, was), sent(after, is), counts, person)
      .then(
        (typing) => tell({ state: 'done', typing }),
        (error: unknown) => tell({ state: 'failed', why: String(error) }),
      );
    return () => worker.terminate();
  }, [before, after, was, is, isReady, counts, why, person, findList]);
  return known;
}
