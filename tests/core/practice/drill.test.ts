import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { createRunCounter } from '../../../src/core/needs/counts-runs.ts';
import { companyOf, drawCompany } from '../../../src/core/practice/company.ts';
import { AT_WORK, type DrillMaterial, nextPrompt, type Prompt } from '../../../src/core/practice/drill.ts';
import type { NeedProgress } from '../../../src/core/practice/progress.ts';
import { foldSessions, progressOf } from '../../../src/core/practice/progress.ts';
import { arrives, rankNeeds } from '../../../src/core/practice/ranked-needs.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { need, sample, waysOf } from './sample.ts';

const counter = createRunCounter();
counter.add(`${'items.map((item) => item.size)\n'.repeat(20)}if (one != other) return "no";\n`);
counter.endText();
const company = companyOf(counter.counts());

const LETTERS = [...'abcdefghijklmnopqrstuvwxyz'];
const NEEDS = [...LETTERS, ' ', '(', ')', '=', '>', '!', '"', '.', '1', 'key:Home', 'shortcut:Control+KeyS'];

/** Right so often on one day, by need. */
function practised(tries: Readonly<Record<string, readonly boolean[]>>): ReadonlyMap<string, NeedProgress> {
  const attempts = Object.entries(tries).flatMap(([text, all]) =>
    all.map((right, at) => ({
      need: text,
      at,
      right,
      ms: right ? 200 : null,
      hinted: false,
      diagnosis: null,
    })),
  );
  return progressOf(foldSessions([{ startedAt: 0, activeMs: 0, attempts, routes: {} }]), () => null);
}

function material(progress: ReadonlyMap<string, NeedProgress> = new Map(), texts = NEEDS): DrillMaterial {
  const routes = findRoutes(sample, usHost, texts.map(need));
  return { ranked: rankNeeds(routes, progress, company, 1000), company, groups: null };
}

/** A whole session: each prompt answered by whether the need of it goes right. */
function session(from: DrillMaterial, length: number, isRight: (text: string) => boolean): readonly Prompt[] {
  const tries = new Map<string, boolean[]>();
  const prompts: Prompt[] = [];
  for (let at = 0; at < length; at++) {
    const prompt = nextPrompt(from, { prompts, tries }, 0.42);
    if (prompt === null) break;
    prompts.push(prompt);
    for (const text of prompt.needs) tries.set(text, [...(tries.get(text) ?? []), isRight(text)]);
  }
  return prompts;
}

describe('the company that a character keeps', () => {
  const any = () => true;
  test('symbols come as they stand in the text', () => {
    const drawn = Array.from({ length: 40 }, (_, at) =>
      drawCompany(company, '=', any, 7, () => at / 40)?.join(''),
    );
    expect(drawn.some((text) => text?.startsWith('m) =>'))).toBe(true);
    expect(drawn.some((text) => text?.includes('!='))).toBe(true);
  });

  test('has something before the character, which is no space, and uses only what may be used', () => {
    for (const char of ['(', '=', 'e', '"']) {
      for (let at = 0; at < 20; at++) {
        const drawn = drawCompany(
          company,
          char,
          (each) => each !== '\n' && each !== '>',
          6,
          () => at / 20,
        );
        expect(drawn?.lastIndexOf(char)).toBeGreaterThan(0);
        expect(drawn?.[0]).not.toBe(' ');
        expect(drawn).not.toContain('>');
      }
    }
  });

  test('what is not in the text has none', () => {
    expect(drawCompany(company, 'ß', any, 6, () => 0.5)).toBeNull();
  });
});

describe('needs are taken up', () => {
  test('the new first, the more frequent in the text before others; then wrong, then known', () => {
    const texts = ['a', 'e', 'k', 'm', 'shortcut:Control+KeyS'];
    const progress = practised({ a: [true, true, true], k: [true, true, true, false] });
    expect(material(progress, texts).ranked.map(({ text, standing }) => `${text} ${standing}`)).toEqual([
      'e new',
      'm new',
      'shortcut:Control+KeyS new',
      'k wrong',
      'a known',
    ]);
  });

  test('what the design cannot type is left out', () => {
    expect(material(new Map(), ['a', 'ß']).ranked.map(({ text }) => text)).toEqual(['a']);
  });
});

test.each([
  ['k', true],
  ['key:Home', true],
  ['shortcut:Control+KeyC', true],
  ['shortcut:Control+KeyW', false],
  ['shortcut:Alt+Tab', false],
  ['key:AudioVolumeUp', false],
])('from a real board %s arrives: %s', (text, does) => {
  expect(arrives(need(text))).toBe(does);
});

describe('drills', () => {
  test('are the same for the same seed, and not for another', () => {
    const from = material();
    const past = { prompts: [], tries: new Map() };
    expect(nextPrompt(from, past, 0.42)).toEqual(nextPrompt(from, past, 0.42));
    const others = [0.1, 0.2, 0.3, 0.7].map((seed) => JSON.stringify(nextPrompt(from, past, seed)?.needs));
    expect(new Set(others).size).toBeGreaterThan(1);
  });

  test('have ten needs in work at a time, and go on to others as these are known', () => {
    const first = session(material(), 2 * AT_WORK, () => false);
    const ranked = material().ranked.map(({ text }) => text);
    for (const { focus, needs } of first) expect([...ranked.slice(0, AT_WORK), ...needs]).toContain(focus);
    const all = new Set(session(material(), 120, () => true).map(({ focus }) => focus));
    expect(all.size).toBeGreaterThan(AT_WORK);
  });

  test('ask for few needs that are neither known nor in work', () => {
    const own = createRunCounter();
    own.add(`${'bcdfghijkl\n'.repeat(20)}${'qa\nea\n'.repeat(5)}`);
    own.endText();
    const texts = [...'abcdefghijklq '];
    const routes = findRoutes(sample, usHost, texts.map(need));
    const ownCompany = companyOf(own.counts());
    const ranked = rankNeeds(routes, practised({ e: [true, true, true] }), ownCompany, 1000);
    const from: DrillMaterial = { ranked, company: ownCompany, groups: null };
    // "a" went wrong, so it is asked for; "q" and "e" stand before it equally often, and only "e" is known.
    const tries = new Map([['a', [false]]]);
    const drawn = Array.from({ length: 20 }, (_, at) => nextPrompt(from, { prompts: [], tries }, at / 20));
    expect(drawn.every((prompt) => prompt?.focus === 'a')).toBe(true);
    expect(drawn.filter((prompt) => prompt?.needs.includes('q')).length).toBeLessThan(5);
  });

  test('bring a wrong one back after two others', () => {
    const from = material(new Map(), ['a', 'e', 'm', 'i', 't', 's']);
    const prompts = session(from, 1, () => true);
    const [wrong = ''] = prompts.map(({ focus }) => focus);
    const later = session(from, 5, (text) => text !== wrong).map(({ focus }) => focus);
    expect(later[0]).toBe(wrong);
    expect(later.slice(1, 3)).not.toContain(wrong);
    expect(later[3]).toBe(wrong);
  });

  test('mix in what is known: every third', () => {
    const known = Object.fromEntries(LETTERS.slice(0, 13).map((text) => [text, [true, true, true]]));
    const prompts = session(material(practised(known)), 9, () => true);
    const mixed = prompts.map(({ standing }) => standing === 'known');
    expect(mixed).toEqual([false, false, true, false, false, true, false, false, true]);
  });

  test('ask for shortcuts by themselves, for keys and chords between letters, for one group if that is wished', () => {
    const shapes = new Map(
      (['keys', 'shortcuts', 'digits'] as const).map((group) => {
        const past = { prompts: [], tries: new Map() };
        return [group, nextPrompt({ ...material(), groups: [group] }, past, 0.5)];
      }),
    );
    expect(shapes.get('shortcuts')).toMatchObject({ shape: 'alone', needs: ['shortcut:Control+KeyS'] });
    expect(shapes.get('keys')).toMatchObject({ shape: 'transition', focus: 'key:Home' });
    expect(shapes.get('digits')).toMatchObject({ shape: 'transition', focus: '1' });
    expect(shapes.get('keys')?.needs[1]).toBe('key:Home');
  });

  test('are none where there is nothing to practise', () => {
    expect(nextPrompt(material(new Map(), []), { prompts: [], tries: new Map() }, 0.5)).toBeNull();
  });
});

test('a route is remembered by its keys and by its words', () => {
  expect(waysOf(['(']).of('(')?.known).toEqual({
    signature: 'hold RT2, press L24',
    words: 'hold right middle thumb (Signs), press left ring home',
    keys: ['L24'],
  });
});
