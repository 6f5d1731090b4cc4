import type { Facts } from './facts.ts';
import type { Finding, Mend, Severity } from './find.ts';

/** One thing that can be wrong with a design. Pure: the same facts give the same findings in the same order. */
export interface Rule {
  /** A short sentence in lower case with hyphens; the name of the rule's file. */
  readonly id: string;
  /** The rule as a heading. */
  readonly title: string;
  /** Why it matters, in a sentence. */
  readonly why: string;
  /** Says that the rule judges what ordinary typing does, and has nothing to say where that is not known. */
  readonly about?: 'accidents';
  /** Says that the rule judges what hands and fingers can well do: its findings want the usual caution beside them. */
  readonly judgesHands?: true;
  check(facts: Facts): readonly Finding[];
}

/** What a rule states about one finding; lists that are left out are empty. */
export interface FindingParts {
  readonly rule: string;
  readonly messageId: string;
  readonly severity: Severity;
  readonly message: string;
  readonly keys?: readonly string[];
  readonly layers?: readonly string[];
  readonly chords?: readonly string[];
  readonly data?: Readonly<Record<string, string | number>>;
  readonly mends?: readonly Mend[];
}

/** A finding with its empty parts filled in. */
export function finding(parts: FindingParts): Finding {
  const { rule, messageId, severity, message } = parts;
  return {
    rule,
    messageId,
    severity,
    message,
    subjects: { keys: parts.keys ?? [], layers: parts.layers ?? [], chords: parts.chords ?? [] },
    data: parts.data ?? {},
    mends: parts.mends ?? [],
  };
}
