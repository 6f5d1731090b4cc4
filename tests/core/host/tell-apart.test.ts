import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import type { HostLayout } from '../../../src/core/host/host-layout.ts';
import { keyOfOutput } from '../../../src/core/host/key-of-output.ts';
import {
  hostsThatFit,
  hostsThatFitMap,
  nextProbe,
  type Probe,
  type ProbeAnswer,
} from '../../../src/core/host/tell-apart.ts';
import { TYPING_CODES } from '../../../src/core/host/typing-codes.ts';
import { SHIPPED_TABLES, shippedTable } from './shipped-tables.ts';

const hosts = new Map(SHIPPED_TABLES.map((name) => [name, hostFromTable(shippedTable(name))]));
const host = (name: string): HostLayout => {
  const found = hosts.get(name);
  if (found === undefined) throw new Error(name);
  return found;
};
const nameOf = (one: HostLayout) => [...hosts].find(([, other]) => other === one)?.[0];

/** What a browser on that computer says of a press. */
const answer = (on: HostLayout, probe: Probe): ProbeAnswer => ({
  probe,
  key:
    keyOfOutput(
      on.outputOf(probe.code, { ...probe, level3: probe.level3 && on.level3 !== null, caps: false }),
    ) ?? 'Unidentified',
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
    const probe = nextProbe(among, [], ['KeyE']);
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
    expect(nextProbe([host('us'), host('de')], [], ['KeyA', 'KeyY'])).toMatchObject({ code: 'KeyY' });
    expect(nextProbe([host('us'), host('de')], [], ['KeyA'])).not.toMatchObject({
      shift: false,
      level3: false,
    });
  });

  test('a layout is alike to itself', () => {
    expect(nextProbe([host('us'), host('us')])).toBeNull();
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
