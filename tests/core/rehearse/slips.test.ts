import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { rehearse } from '../../../src/core/rehearse/recorder.ts';
import { remediesOf, withTries } from '../../../src/core/rehearse/remedies.ts';
import { slipReason, slipsOf, slipTitle } from '../../../src/core/rehearse/slips.ts';
import { both, design, key } from '../engine/design.ts';
import { namesIn, played } from './played.ts';

/** A press of each letter, 200 ms apart and 80 ms long, from a time on. */
const typed = (text: string, from: number) =>
  [...text].map((id, at) => `${id}↓${from + 200 * at} ${id}↑${from + 200 * at + 80}`).join(' ');

/** Slips as "title: reason". */
function told(stream: string, meant: string, keymap?: Parameters<typeof played>[1]): string[] {
  const run = played(stream, keymap);
  return slipsOf(run, meant).map((slip) => `${slipTitle(slip)}: ${slipReason(run, slip, namesIn(run))}`);
}

const remedies = (stream: string, meant: string, keymap?: Parameters<typeof played>[1]) => {
  const run = played(stream, keymap);
  const [slip] = slipsOf(run, meant);
  if (slip === undefined) throw new Error('no slip');
  return { run, found: remediesOf(run, meant, slip, namesIn(run)) };
};

describe('slips', () => {
  test('none where all came as it was meant', () => {
    expect(told(typed('ASH', 0), 'ash')).toEqual([]);
  });

  test.each([
    [
      'a chord that was not meant',
      `${typed('A', 0)} R↓300 T↓331 R↑380 T↑400 ${typed('S', 600)}`,
      'arts',
      '“rt” came as ⇥: R was still down when T came after 31 ms: chord Tab (window 45 ms)',
    ],
    [
      'a hold that was not meant',
      `${typed('A', 0)} F↓300 A↓450 A↑510 F↑520 ${typed('S', 800)}`,
      'afas',
      '“fa” came as A: F was down 200 ms, as long as “hold after” allows: hold',
    ],
    [
      'a chord that was missed',
      `${typed('A', 0)} R↓300 T↓352 R↑400 T↑420`,
      'a\t',
      '“⇥” came as rt: T came 52 ms after R: too late for chord Tab (window 45 ms)',
    ],
    [
      'a wrong key',
      typed('ADS', 0),
      'as',
      'd came unasked: D was pressed, and nothing else was decided there',
    ],
    ['a key left out', typed('AS', 0), 'ahs', '“h” did not come: No key was pressed for it'],
  ])('%s', (_, stream, meant, expected) => {
    expect(told(stream, meant)).toEqual([expected]);
  });
});

describe('settings that would have prevented a slip', () => {
  test('a chord that was not meant: a shorter window, or more quiet before', () => {
    const { found } = remedies(`${typed('A', 0)} R↓300 T↓331 R↑380 T↑400`, 'art');
    expect(found.map(({ title }) => title)).toEqual([
      'Window of Tab: 30 ms instead of 45 ms',
      'Quiet before Tab: 305 ms instead of 0 ms',
    ]);
  });

  test('a chord that was missed: a longer window', () => {
    const { found } = remedies('R↓300 T↓352 R↑400 T↑420', '\t');
    expect(found.map(({ title }) => title)).toEqual(['Window of Tab: 55 ms instead of 45 ms']);
  });

  test('a hold that was not meant, down for 230 ms', () => {
    const { found } = remedies(`${typed('A', 0)} F↓300 F↑530 ${typed('S', 700)}`, 'afs');
    expect(found.map(({ title }) => title)).toEqual([
      'F: hold after 230 ms instead of 200 ms',
      'F: tap if alone',
      'F: quiet before 305 ms',
    ]);
  });

  test('a hold that was meant and came as a tap', () => {
    const slow = design({ base: { F: both(key('F'), key('ShiftLeft')), A: key('A') } });
    const { found } = remedies('F↓0 A↓100 A↑150 F↑180', 'A', slow);
    expect(found.map(({ title }) => title)).toEqual([
      'F: hold after 175 ms instead of 200 ms',
      'F: hold by a press inside',
      'F: hold by a tap inside',
    ]);
  });

  test('each is proved: with it the same presses give what was meant', () => {
    const { run, found } = remedies(`${typed('A', 0)} R↓300 T↓331 R↑380 T↑400`, 'art');
    expect(found.length).toBeGreaterThan(0);
    for (const { edit, slips } of found) {
      const again = rehearse(withTries(run.keymap, [edit]), usHost, run.events);
      expect(again.ok && slipsOf(again.value, 'art')).toHaveLength(slips);
    }
  });
});
