import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { CAUTION } from '../../../src/core/base/care.ts';
import { judgeHands } from '../../../src/core/findings/judges-hands.ts';
import { Caution } from '../../../src/ui/board/caution.tsx';

const sources = import.meta.glob<string>('../../../src/ui/**/*.tsx', {
  query: '?raw',
  import: 'default',
  eager: true,
});

afterEach(cleanup);

test.each([[false], [true]])('it says what the shared text says (of load: %s)', (ofLoad) => {
  render(<Caution ofLoad={ofLoad} />);
  expect(screen.getByText((text) => text.includes(CAUTION))).toBeInTheDocument();
});

describe('wherever a face rates reach, effort or comfort, the caution stands', () => {
  test.each([
    ['keys out of reach on the board', 'desks/design/board-editor/kept-panel'],
    ['a board on paper', 'desks/design/board-editor/paper-dialog'],
    ['what needs and a text cost', 'desks/design/coverage/coverage-panel'],
    ['findings about hands', 'desks/design/findings/findings-panel'],
    ['the measured typist', 'desks/design/measure/figures-step'],
    ['chords ranked by comfort', 'desks/design/suggest/suggest-chord'],
    ['two versions compared by presses', 'app/versions/figures'],
    ['practice', 'desks/practise/care'],
  ])('%s', (_, file) => {
    expect(sources[`../../../src/ui/${file}.tsx`]).toMatch(/<Caution\b|\{CAUTION\}/);
  });
});

const finding = (rule: string) => ({
  rule,
  messageId: '',
  severity: 'note' as const,
  message: '',
  subjects: { keys: [], layers: [], chords: [] },
  data: {},
  mends: [],
});

test.each([
  ['key-out-of-reach', true],
  ['chord-too-wide-for-hand', true],
  ['chord-wants-one-finger-twice', true],
  ['need-clumsy', true],
  ['reference-broken', false],
  ['key-unreachable', false],
])('the finding %s judges hands: %s', (rule, judges) => {
  expect(judgeHands([finding(rule)])).toBe(judges);
});
