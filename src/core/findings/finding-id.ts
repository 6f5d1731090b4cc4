import type { Finding } from './find.ts';

/**
 * What makes a finding the same before and after an edit: its rule and message, the part at fault of each kind, and the
 * need it is about. Numbers, wording and further parts may change.
 */
export function findingId(finding: Finding): string {
  const { keys, layers, chords } = finding.subjects;
  const about = [keys[0], layers[0], chords[0], finding.data.need].map((part) => part ?? '');
  return [finding.rule, finding.messageId, ...about].join('/');
}
