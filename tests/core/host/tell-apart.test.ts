import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computerVerdict } from '../../../src/core/host/computer-verdict.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import type { HostLayout } from '../../../src/core/host/host-layout.ts';
import { keyOfOutput } from '../../../src/core/host/key-of-output.ts';
import {
  hostsThatFit,
  hostsThatFitMap,
  NOTHING_MISSING,
  nextProbe,
  nextQuestion,
  type Probe,
  type ProbeAnswer,
  withoutProbe,
} from '../../../src/core/host/tell-apart.ts';
import { TYPING_CODES } from '../../../src/core/host/typing-codes.ts';
import type { Code } from '../../../src/core/keymap/codes.ts';
import { SHIPPED_TABLES, shippedTable } from './shipped-tables.ts';

const hosts = new Map(SHIPPED_TABLES.map((name) => [name, hostFromTable(shippedTable(name))]));
const host = (name: string): HostLayout => {
  const found = hosts.get(name);
  if (found === undefined) throw new Error(name);
  return found;
};
const nameOf = (one: HostLayout) => [...hosts].find(([, other]) => other === one)?.[0];

/** What a browser on that computer says of a press. */
const answer = (on: HostLayout, probe: Probe, caps = false): ProbeAnswer => ({
  probe,
  key:
    keyOfOutput(on.outputOf(probe.code, { ...probe, level3: probe.level3 && on.level3 !== null, caps })) ??
    'Unidentified',
  caps,
});
const only = (...codes: readonly Code[]) => ({
  codes: TYPING_CODES.filter((code) => !codes.includes(code)),
  level3: false,
});

/** Asks until no press tells more, as the page does. */
function ask(on: HostLayout, among: readonly HostLayout[]) {
  const answers: ProbeAnswer[] = [];
  for (let probe = nextProbe(among); probe !== null; probe = nextProbe(among, answers)) {
    answers.push(answer(on, probe));
  }
  return { answers, left: hostsThatFit(among, answers) };
}

describe('which layout is this computer on', () => {
  test.each([
    ['de', ['us', 'de']],
    ['fr', ['us', 'de', 'fr']],
    ['us-dvorak', ['us', 'us-dvorak', 'gb']],
    ['gb', ['us', 'gb']],
  ])('%s among %j takes one press or two', (name, among) => {
    const { answers, left } = ask(host(name), among.map(host));
    expect(left.map(nameOf)).toEqual([name]);
    expect(answers.length).toBeLessThanOrEqual(2);
  });

  test('level 3 tells apart what is alike without it', () => {
    const among = [host('us'), host('us-altgr-intl')];
    const probe = nextProbe(among, [], only('KeyE'));
    expect(probe).toEqual({ code: 'KeyE', shift: false, level3: true });
    if (probe === null) throw new Error('no press');
    for (const one of among) expect(hostsThatFit(among, [answer(one, probe)])).toEqual([one]);
  });

  test('whatever the computer is on is left over, and what is left with it answers alike', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SHIPPED_TABLES), (name) => {
        const { answers, left } = ask(host(name), [...hosts.values()]);
        expect(left.map(nameOf)).toContain(name);
        expect(answers.length).toBeLessThanOrEqual(12);
        expect(nextProbe(left, answers)).toBeNull();
      }),
      { numRuns: 12, seed: 7 },
    );
  });

  test('only keys that are there are asked for', () => {
    expect(nextProbe([host('us'), host('de')], [], only('KeyA', 'KeyY'))).toMatchObject({ code: 'KeyY' });
    expect(nextProbe([host('us'), host('de')], [], only('KeyA'))).not.toMatchObject({
      shift: false,
      level3: false,
    });
  });

  test('a layout is alike to itself', () => {
    expect(nextProbe([host('us'), host('us')])).toBeNull();
  });
});

describe('what cannot be pressed', () => {
  const among = [host('us'), host('pl'), host('us-altgr-intl')];

  test('at level 3 is the modifier: no key is asked for there any more, and what differs there alone stays', () => {
    const probe = nextProbe(among);
    expect(probe).toMatchObject({ level3: true });
    if (probe === null) throw new Error('no press');
    const missing = withoutProbe(NOTHING_MISSING, probe);
    expect(missing).toEqual({ codes: [], level3: true });
    const everyKey = { codes: ['IntlBackslash'], level3: true } as const;
    expect(nextProbe(among, [], missing)?.level3).toBe(false);
    expect(nextProbe(among, [], everyKey)).toBeNull();
    expect(nextQuestion(host('pl'), among, [], missing)).toMatchObject({ level3: false });
  });

  test('without it is the key: that key alone is not asked for, with Shift either', () => {
    const pair = [host('us'), host('de')];
    const probe = nextProbe(pair);
    if (probe === null) throw new Error('no press');
    const missing = withoutProbe(NOTHING_MISSING, probe);
    expect(missing).toEqual({ codes: [probe.code], level3: false });
    expect(nextProbe(pair, [], missing)?.code).not.toBe(probe.code);
    expect(nextProbe(pair, [], missing)).not.toBeNull();
  });
});

describe('is this computer on the layout of the design', () => {
  test.each(SHIPPED_TABLES.map((name) => [name]))(
    '%s takes five presses at most, level 3 among them',
    (name) => {
      const wished = host(name);
      const all = [...hosts.values()];
      const answers: ProbeAnswer[] = [];
      for (let probe = nextQuestion(wished, all); probe !== null; probe = nextQuestion(wished, all, answers))
        answers.push(answer(wished, probe));
      expect(answers.length).toBeLessThanOrEqual(5);
      expect(answers.some(({ probe }) => !probe.shift && !probe.level3)).toBe(true);
      expect(wished.level3 === null || answers.some(({ probe }) => probe.level3)).toBe(true);
      expect(hostsThatFit(all, answers).map(nameOf)).toContain(name);
    },
  );

  test('letters arranged otherwise are seen, though no table has them', () => {
    const own: HostLayout = {
      ...host('us'),
      outputOf: (code, level) =>
        host('us').outputOf(code.startsWith('Key') || code === 'Semicolon' ? 'KeyQ' : code, level),
    };
    const all = [...hosts.values()];
    const answers: ProbeAnswer[] = [];
    for (let probe = nextQuestion(host('us'), all); probe !== null; ) {
      answers.push(answer(own, probe));
      probe = nextQuestion(host('us'), all, answers);
    }
    expect(hostsThatFit([host('us')], answers)).toEqual([]);
  });

  test.each([
    ['us', ['us'], 'fits'],
    ['us', ['pl'], 'fits'],
    ['pl', ['us'], 'other'],
    ['de', ['de', 'at'], 'fits'],
    ['de', ['de', 'de-mac'], 'unsure'],
    ['de', ['us'], 'other'],
    ['de', [], 'other'],
  ] as const)('a design for %s on %j: %s', (design, left, verdict) => {
    expect(computerVerdict(host(design), left.map(host))).toBe(verdict);
  });

  test('Caps Lock does not make another layout of it', () => {
    const probe = { code: 'KeyY', shift: false, level3: false } as const;
    expect(hostsThatFit([host('us'), host('de')], [answer(host('de'), probe, true)])).toEqual([host('de')]);
  });
});

test('a map of the keyboard leaves the layout that it was made from', () => {
  for (const [name, own] of hosts) {
    const plain = { shift: false, level3: false, caps: false };
    const map = new Map<string, string>(
      TYPING_CODES.flatMap((code) => {
        const output = own.outputOf(code, plain);
        return output.kind === 'char' ? [[code, output.char] as const] : [];
      }),
    );
    expect(hostsThatFitMap([...hosts.values()], map).map(nameOf), name).toContain(name);
  }
  expect(hostsThatFitMap([host('us'), host('de')], new Map([['KeyY', 'z']])).map(nameOf)).toEqual(['de']);
});
