import { describe, expect, test } from 'vitest';
import { readSession } from '../../../src/core/practice/read-session.ts';
import { type Session, withDone, withPrompt, withSlip } from '../../../src/core/practice/session.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { exportPractice } from '../../../src/store/practice/export-practice.ts';
import { makePractice } from '../../../src/store/practice/make-practice.ts';
import { USUAL_CHOICES } from '../../../src/store/practice/practice-choices.ts';
import { PracticeShelf } from '../../../src/store/practice/practice-shelf.ts';

const PROMPT = { needs: ['a', 'k'], focus: 'k', standing: 'new', shape: 'company' } as const;
const ROUTE = { signature: 'press R23', words: 'press right middle home', keys: ['R23'] };

/** A page of the practice over the same disk as others. */
function pages() {
  const values = memoryKeyValue();
  let ids = 0;
  let now = 1000;
  const page = () =>
    makePractice(new PracticeShelf(values), {
      now: () => now++,
      random: () => 0.5,
      newId: () => `s${++ids}`,
    });
  return { page, values };
}

type Page = ReturnType<ReturnType<typeof pages>['page']>;

function change(page: Page, next: (session: Session) => Session) {
  const { current, change } = page.getState();
  if (current === null) throw new Error('no session');
  change(next(current));
}

async function begun() {
  const { page, values } = pages();
  const first = page();
  await first.getState().open('d1');
  first.getState().start();
  change(first, (session) => withDone(withPrompt(session, PROMPT), 1000, null, ROUTE));
  return { page, values, first };
}

describe('practice', () => {
  test('goes on after a reload in the middle of a prompt, without having been ended', async () => {
    const { page, first } = await begun();
    change(first, (session) => withSlip(session, { sure: true, faults: [{ fault: 'came-early' }] }));
    await first.getState().written();
    const second = page();
    await second.getState().open('d1');
    expect(second.getState().current).toEqual(first.getState().current);
    expect(second.getState().current).toMatchObject({ position: 1, attempts: [{ need: 'a' }] });
  });

  test('is told by design, and an ended session is no longer the current one', async () => {
    const { page, first } = await begun();
    first.getState().end();
    await first.getState().written();
    const second = page();
    await second.getState().open('d1');
    expect(second.getState()).toMatchObject({ current: null, ended: [{ id: 's1' }] });
    await second.getState().open('d2');
    expect(second.getState()).toMatchObject({ current: null, ended: [] });
  });

  test('takes up what another tab has added, and keeps what goes on here', async () => {
    const { page, first } = await begun();
    const second = page();
    await second.getState().open('d1');
    first.getState().end();
    await first.getState().written();
    await second.getState().open('d1');
    expect(second.getState()).toMatchObject({ current: null, ended: [{ id: 's1' }] });
    second.getState().start();
    const going = second.getState().current;
    await second.getState().open('d1');
    expect(second.getState().current).toBe(going);
  });

  test('begun before it was read, it has what was ended earlier all the same', async () => {
    const { page, first } = await begun();
    first.getState().end();
    await first.getState().written();
    const second = page();
    const opening = second.getState().open('d1');
    second.getState().start();
    change(second, (session) => withDone(withPrompt(session, PROMPT), 2000, null, ROUTE));
    const going = second.getState().current;
    await opening;
    expect(going).not.toBeNull();
    expect(second.getState().current).toBe(going);
    expect(second.getState().ended.map(({ id }) => id)).toEqual(['s1']);
  });

  test('a session without a try leaves nothing behind', async () => {
    const { page, values } = pages();
    const first = page();
    await first.getState().open('d1');
    first.getState().start();
    change(first, (session) => withPrompt(session, PROMPT));
    first.getState().end();
    await first.getState().written();
    expect(await values.names()).toEqual([]);
    expect(first.getState()).toMatchObject({ current: null, ended: [] });
  });

  test('is deleted for the open design alone', async () => {
    const { page, values, first } = await begun();
    await first.getState().written();
    const other = page();
    await other.getState().open('d2');
    other.getState().start();
    change(other, (session) => withDone(withPrompt(session, PROMPT), 1000, null, ROUTE));
    await other.getState().written();
    await first.getState().forget('d1');
    expect(await values.names()).toEqual(['session:d2:s2']);
    expect(first.getState()).toMatchObject({ current: null, ended: [] });
  });

  test('of a design that is not open is deleted, also what waits to be written; the open one keeps its own', async () => {
    const { values, first } = await begun();
    void first.getState().open('d2');
    first.getState().start();
    change(first, (session) => withDone(withPrompt(session, PROMPT), 1000, null, ROUTE));
    await first.getState().forget('d1');
    await first.getState().written();
    expect(await values.names()).toEqual(['session:d2:s2']);
    expect(first.getState().current?.id).toBe('s2');
  });

  test('remembers how the typist wants to practise, as far as it can be read', async () => {
    const { page, values } = pages();
    const first = page();
    await first.getState().open('d1');
    first.getState().choose({ group: 'symbols', minutes: 10 });
    await first.getState().written();
    const second = page();
    await second.getState().open('d1');
    expect(second.getState().choices).toEqual({ ...USUAL_CHOICES, group: 'symbols', minutes: 10 });
    await values.set('choices', { minutes: 600, group: 'stars', hints: 7 });
    const third = page();
    await third.getState().open('d1');
    expect(third.getState().choices).toEqual(USUAL_CHOICES);
  });

  test('says when it cannot be written, and keeps it on the page', async () => {
    const broken = { ...memoryKeyValue(), set: async () => Promise.reject(new Error('the disk is full')) };
    const world = { now: () => 1, random: () => 0.5, newId: () => 's1' };
    const page = makePractice(new PracticeShelf(broken), world);
    await page.getState().open('d1');
    page.getState().start();
    change(page, (session) => withPrompt(session, PROMPT));
    await page.getState().written();
    expect(page.getState().failed).toBe('the disk is full');
    expect(page.getState().current?.prompts).toHaveLength(1);
  });

  test('passes over what it cannot read', async () => {
    const { page, values } = pages();
    await values.set('session:d1:odd', { attempts: 'none' });
    const first = page();
    await first.getState().open('d1');
    expect(first.getState()).toMatchObject({ ended: [], failed: null });
    expect(await values.names()).toEqual(['session:d1:odd']);
  });

  test('can be taken out as text, and read back', async () => {
    const { first } = await begun();
    const { current } = first.getState();
    if (current === null) throw new Error('no session');
    const told = JSON.parse(exportPractice('Weir', [current]));
    expect(told).toMatchObject({ format: 'practice-log', version: 1, design: 'Weir' });
    expect(readSession(told.sessions[0])).toEqual(current);
  });
});
