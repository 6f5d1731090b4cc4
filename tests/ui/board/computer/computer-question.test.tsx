import { act, cleanup, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { HostLayout } from '../../../../src/core/host/host-layout.ts';
import { keyOfOutput } from '../../../../src/core/host/key-of-output.ts';
import { HOLDS_FOR_MS, NOTHING_TOLD, readComputer } from '../../../../src/core/host/told-of-computer.ts';
import { CODES } from '../../../../src/core/keymap/codes.ts';
import { useKeptComputer } from '../../../../src/store/computer/kept-computer.ts';
import type { KnownHost } from '../../../../src/store/hosts.ts';
import { ComputerQuestion } from '../../../../src/ui/board/computer/computer-question.tsx';
import { ComputerSays } from '../../../../src/ui/board/computer/computer-says.tsx';
import { useComputer } from '../../../../src/ui/board/computer/use-computer.ts';
import { hostFile, knownHost } from './host-files.ts';

/** What both desks do: the question in place of the beginning, else what is known and the way to begin. */
function Desk({ known, begin }: { readonly known: KnownHost; readonly begin: () => void }) {
  const computer = useComputer(known);
  if (computer.asking) return <ComputerQuestion computer={computer} title={known.table.title} />;
  return (
    <>
      <ComputerSays computer={computer} known={known} />
      <button type="button" onClick={computer.toBeAsked ? computer.ask : begin}>
        Begin
      </button>
    </>
  );
}

const asked = () => document.querySelector('[data-probe]')?.getAttribute('data-probe') ?? null;
const verdict = () => document.querySelector('[data-verdict]')?.getAttribute('data-verdict') ?? null;
const press = () => act(() => screen.getByRole('button', { name: 'Begin' }).click());

function send(type: 'keydown' | 'keyup', code: string, key: string) {
  act(() => void window.dispatchEvent(new KeyboardEvent(type, { code, key, cancelable: true })));
}

/** Presses what is asked for, as a computer with that layout reads it. */
function answer(host: HostLayout) {
  const [name = '', ...around] = (asked() ?? '').split(' ').reverse();
  const code = CODES.find((one) => one === name);
  if (code === undefined) throw new Error('nothing is asked for');
  const level = { shift: around.includes('ShiftLeft'), level3: around.includes('AltRight'), caps: false };
  const own = host.outputOf(code, { ...level, level3: level.level3 && host.level3 !== null });
  for (const each of around) send('keydown', each, each);
  send('keydown', code, keyOfOutput(own) ?? 'Unidentified');
  send('keyup', code, '');
  for (const each of around) send('keyup', each, each);
}

async function answerAll(host: HostLayout): Promise<readonly string[]> {
  const told: string[] = [];
  await waitFor(() => expect(asked()).not.toBeNull());
  for (let at = asked(); at !== null && told.length < 9; at = asked()) {
    told.push(at);
    answer(host);
  }
  return told;
}

async function opened(name: string, map: ReadonlyMap<string, string> | null = null) {
  vi.stubGlobal('navigator', {
    ...navigator,
    platform: 'Linux',
    keyboard: map === null ? undefined : { getLayoutMap: async () => map },
  });
  const begin = vi.fn();
  render(<Desk known={await knownHost(name)} begin={begin} />);
  await act(async () => {});
  return begin;
}

/** Few of the layouts, so that the test need not read them all. */
const OFFERED = ['us', 'de', 'at', 'fr', 'pl'].map((layout) => ({ layout, variant: '', title: layout }));

beforeEach(() => {
  useKeptComputer.setState(NOTHING_TOLD);
  vi.stubGlobal('fetch', async (address: string) => {
    const name = address.replace('./hosts/', '').replace('.json', '');
    return Response.json(name === 'index' ? OFFERED : await hostFile(name));
  });
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

describe('before anything is typed on a computer whose layout the browser does not tell', () => {
  test('a few presses are asked for, level 3 among them; then one begins, and is not asked again', async () => {
    const begin = await opened('de');
    press();
    const told = await answerAll((await knownHost('de')).host);
    expect(told.length).toBeLessThanOrEqual(5);
    expect(told.some((probe) => probe.startsWith('AltRight') || probe.includes(' AltRight'))).toBe(true);
    expect(begin).not.toHaveBeenCalled();
    expect(verdict()).toBe('fits');
    cleanup();
    const again = await opened('de');
    await waitFor(() => expect(verdict()).toBe('fits'));
    press();
    expect(again).toHaveBeenCalledOnce();
  });

  test('another layout is said before, and named', async () => {
    await opened('us');
    press();
    await answerAll((await knownHost('fr')).host);
    expect(verdict()).toBe('other');
    expect(screen.getByRole('alert')).toHaveTextContent('on fr;');
  });

  test('what was told of the computer counts for a design with another layout too', async () => {
    await opened('de');
    press();
    await answerAll((await knownHost('de')).host);
    cleanup();
    await opened('fr');
    await waitFor(() => expect(verdict()).toBe('other'));
  });

  test('presses can be skipped by the keyboard alone, and are then not asked for on that layout', async () => {
    const begin = await opened('de');
    press();
    await waitFor(() => expect(asked()).not.toBeNull());
    vi.useFakeTimers();
    send('keydown', 'Escape', 'Escape');
    act(() => void vi.advanceTimersByTime(1000));
    vi.useRealTimers();
    expect(verdict()).toBe('unknown');
    press();
    expect(begin).toHaveBeenCalledOnce();
  });

  test('a tap of Escape says that something cannot be pressed: something else is asked for', async () => {
    await opened('de');
    press();
    await waitFor(() => expect(asked()).not.toBeNull());
    const before = asked();
    send('keydown', 'Escape', 'Escape');
    send('keyup', 'Escape', 'Escape');
    expect(asked()).not.toBeNull();
    expect(asked()).not.toBe(before);
  });

  test('what was pressed instead is said, and no longer once it is asked anew', async () => {
    await opened('us');
    press();
    await waitFor(() => expect(asked()).not.toBeNull());
    send('keydown', 'F7', 'F7');
    send('keyup', 'F7', 'F7');
    expect(screen.getByText(/That was F7/)).toBeInTheDocument();
    act(() => screen.getByRole('button', { name: 'Skip this' }).click());
    act(() => screen.getByRole('button', { name: 'Find out' }).click());
    await waitFor(() => expect(asked()).not.toBeNull());
    expect(screen.queryByText(/That was/)).toBeNull();
  });

  test('after half a day it is asked anew', async () => {
    await opened('de');
    press();
    await answerAll((await knownHost('de')).host);
    const { answers, missing, skipped, at } = useKeptComputer.getState();
    const text = JSON.stringify({ answers, missing, skipped, at });
    expect(readComputer(text, at + HOLDS_FOR_MS - 1)).toMatchObject({ answers });
    expect(readComputer(text, at + HOLDS_FOR_MS)).toEqual(NOTHING_TOLD);
    expect(readComputer('{"answers":7}', at)).toEqual(NOTHING_TOLD);
    expect(readComputer('no JSON', at)).toEqual(NOTHING_TOLD);
  });
});

test('a browser that knows the layout is believed: nothing is asked, a mismatch is said', async () => {
  const begin = await opened('us', new Map([['KeyY', 'y']]));
  expect(verdict()).toBeNull();
  press();
  expect(begin).toHaveBeenCalledOnce();
  cleanup();
  await opened('us', new Map([['KeyY', 'z']]));
  expect(verdict()).toBe('other');
});
