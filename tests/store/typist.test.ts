// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { USUAL_LIMITS } from '../../src/core/findings/accident-limits.ts';
import { personAt } from '../../src/core/typist/person.ts';
import { memoryKeyValue } from '../../src/store/keeping/key-value.ts';
import { makeTypist, readChoices } from '../../src/store/make-typist.ts';
import { RunTexts } from '../../src/store/run-texts.ts';

describe('the typist', () => {
  test('is average at first, and there again as chosen at the next visit', async () => {
    const values = memoryKeyValue();
    const one = makeTypist(values);
    expect(one.getState().person.parameters.wpm).toBeCloseTo(48.5);
    one.getState().setSpeed(82);
    one.getState().setText('german');
    one.getState().setLimits({ delayMs: 60 });
    const later = makeTypist(values);
    await later.getState().start();
    expect(later.getState()).toMatchObject({
      speed: 82,
      text: 'german',
      limits: { ...USUAL_LIMITS, delayMs: 60 },
      person: personAt(82),
    });
  });

  test.each(['code', 'own', 'design'] as const)(
    '%s as the text is there again at the next visit',
    async (text) => {
      const values = memoryKeyValue();
      makeTypist(values).getState().setText('german');
      makeTypist(values).getState().setText(text);
      const later = makeTypist(values);
      await later.getState().start();
      expect(later.getState().text).toBe(text);
    },
  );

  test('what is chosen before the kept choice has been read stays', async () => {
    const values = memoryKeyValue();
    makeTypist(values).getState().setSpeed('slow');
    const later = makeTypist(values);
    const starting = later.getState().start();
    later.getState().setSpeed('fast');
    await starting;
    expect(later.getState().speed).toBe('fast');
  });

  test('who asks for the measured one before there is any is average until it comes', () => {
    const store = makeTypist(memoryKeyValue());
    store.getState().setSpeed('measured');
    expect(store.getState().person).toEqual(personAt(48.5));
    const measured = personAt(61, 1.2);
    store.getState().setMeasured(measured);
    expect(store.getState().person).toBe(measured);
    store.getState().setMeasured(null);
    expect(store.getState().person).toEqual(personAt(48.5));
  });

  test('is the same object for as long as nothing about it changes', () => {
    const store = makeTypist(memoryKeyValue());
    const { person } = store.getState();
    store.getState().setText('code');
    store.getState().setMeasured(personAt(70));
    expect(store.getState().person).toBe(person);
  });

  test.each([
    ['nothing', undefined],
    ['a text', 'fast'],
    ['foreign values', { speed: 'reckless', spreadFactor: 40, text: 'runes', limits: { delayMs: 'long' } }],
  ])('%s in its place is as good as no choice', (_, kept) => {
    expect(readChoices(kept)).toEqual({
      speed: 'average',
      spreadFactor: 1,
      text: null,
      limits: USUAL_LIMITS,
    });
  });
});

describe('ready texts', () => {
  const table = {
    name: 'few',
    title: 'Few',
    source: 'made up',
    licence: 'none',
    bytes: 2,
    total: 2,
    rows: [['', 'ab', [1, 1]]],
  };
  const told = (texts: RunTexts) => new Promise<void>((done) => texts.subscribe(done));

  test('are fetched once, when first asked for', async () => {
    const asked: string[] = [];
    const texts = new RunTexts(async (address) => {
      asked.push(address);
      return table;
    });
    expect(texts.known('few').state).toBe('loading');
    await told(texts);
    expect(texts.known('few')).toMatchObject({ state: 'ready', title: 'Few', counts: { total: 2 } });
    expect(asked).toEqual(['./texts/few.json']);
  });

  test.each([
    ['cannot be had', () => Promise.reject(new Error('no network'))],
    ['is no table', () => Promise.resolve({ rows: 1 })],
  ])('one that %s is missing, with a sentence', async (_, fetchTable) => {
    const texts = new RunTexts(fetchTable);
    texts.known('few');
    await told(texts);
    expect(texts.known('few')).toMatchObject({ state: 'missing', why: expect.stringMatching(/“few”/) });
  });
});
