import { isDeepStrictEqual } from 'node:util';
import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { play } from '../../../src/core/engine/play.ts';
import type { AccidentFacts } from '../../../src/core/findings/accident-facts.ts';
import { factsOf } from '../../../src/core/findings/facts.ts';
import type { Finding, Mend } from '../../../src/core/findings/find.ts';
import { findAll, SEVERITIES } from '../../../src/core/findings/find-all.ts';
import { findingId } from '../../../src/core/findings/finding-id.ts';
import type { HostLayout } from '../../../src/core/host/host-layout.ts';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import { needText } from '../../../src/core/keymap/need.ts';
import { checkKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';

/** 0 for a note, 2 for what is broken. */
function harmOf({ severity }: Finding): number {
  return SEVERITIES.length - 1 - SEVERITIES.indexOf(severity);
}

/** Works out what ordinary typing does to a keymap; null where nothing is to be known of it. */
export type Accidents = (keymap: Keymap) => AccidentFacts | null;

const UNKNOWN: Accidents = () => null;

/** Everything the rules say about a keymap with the needs it states. */
export function findingsOf(keymap: Keymap, host: HostLayout, accidents = UNKNOWN): readonly Finding[] {
  return findAll(factsOf(keymap, host, undefined, undefined, accidents(keymap)));
}

/** The keymap after a mend, all its edits as one step; throws with the sentence where one is refused. */
export function afterMend(keymap: Keymap, mend: Mend): Keymap {
  const outcome = applyEdit(keymap, { edit: 'several', title: mend.title, edits: [...mend.edits] });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value.keymap;
}

/** The codes that a stream makes a design send, in order; a refused stream sends none. */
function sentBy(keymap: Keymap, host: HostLayout, events: readonly KeyEvent[]): readonly string[] {
  const played = play(keymap, events, host);
  return played.ok ? played.value.output.map(({ type, code }) => `${type} ${code}`) : [];
}

/**
 * What is wrong with a mend, in sentences; none where it keeps the law: the document stays valid, the finding goes, and
 * every finding that was not there before, or did less harm, does less harm than the one that went. Of a clumsy need two
 * things are no harm: that it was missing before, and that its earlier way, clumsy or not, still types it.
 */
export function faultsOfMend(
  keymap: Keymap,
  host: HostLayout,
  finding: Finding,
  mend: Mend,
  accidents = UNKNOWN,
): readonly string[] {
  const facts = factsOf(keymap, host, undefined, undefined, accidents(keymap));
  const before = findAll(facts);
  const mended = afterMend(keymap, mend);
  const after = findingsOf(mended, host, accidents);
  const harmBefore = new Map(before.map((each) => [findingId(each), harmOf(each)]));
  const missing = new Set(before.filter(({ rule }) => rule === 'need-missing').map(({ data }) => data.need));
  const keepsItsWay = ({ data }: Finding): boolean => {
    const events = facts.needs.find(({ need }) => needText(need) === data.need)?.route?.events ?? [];
    return events.length > 0 && isDeepStrictEqual(sentBy(keymap, host, events), sentBy(mended, host, events));
  };
  const wasThere = (each: Finding) =>
    harmOf(each) <= (harmBefore.get(findingId(each)) ?? -1) ||
    (each.rule === 'need-clumsy' && (missing.has(each.data.need ?? '') || keepsItsWay(each)));
  const isWorse = (each: Finding) => !wasThere(each) && harmOf(each) >= harmOf(finding);
  const stays = after.some((each) => findingId(each) === findingId(finding));
  const read = checkKeymap(mended);
  const taking = `taking “${mend.title}” against “${finding.message}”`;
  return [
    ...(read.ok ? [] : [`${taking} breaks the document: ${JSON.stringify(read.problem)}`]),
    ...(stays ? [`${taking} does not remove it`] : []),
    ...after
      .filter(isWorse)
      .map((each) => `${taking} brings ${each.severity} ${findingId(each)}: ${each.message}`),
  ];
}
