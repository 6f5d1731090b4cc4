import { randomLcg } from 'd3-random';
import { type Need, needText } from '../keymap/need.ts';
import { characterOfNeed, needOfCharacter } from '../needs/text-needs.ts';
import { type Company, drawCompany } from './company.ts';
import type { NeedGroup } from './groups.ts';
import type { RankedNeed } from './ranked-needs.ts';
import type { Standing } from './standing.ts';

/** A few needs to be typed one after the other, for the sake of one of them. */
export interface Prompt {
  /** The needs as a keymap writes them, in order. */
  readonly needs: readonly string[];
  /** The one that it is for; it stands in it. */
  readonly focus: string;
  readonly standing: Standing;
  /** In the text's company, as a change between layers, or by itself. */
  readonly shape: 'company' | 'transition' | 'alone';
}

/** What drills are made from. */
export interface DrillMaterial {
  /** In the order in which needs are taken up. */
  readonly ranked: readonly RankedNeed[];
  readonly company: Company | null;
  /** Drills are for the sake of these; null for all. */
  readonly groups: readonly NeedGroup[] | null;
}

/** So many needs are in work at a time. */
export const AT_WORK = 10;
/** A need in work gives its place to the next one when it was right so often in a row in this session. */
const ENOUGH = 3;
/** Every third prompt is for a need that is known. */
const MIX = 3;
/** One that went wrong comes again after so many other prompts. */
const AGAIN_AFTER = 2;
const PROMPT_LENGTH = 6;

/** What a session has seen of its needs so far. */
export interface DrillPast {
  readonly prompts: readonly Prompt[];
  /** By need: its first tries in this session, oldest first. */
  readonly tries: ReadonlyMap<string, readonly boolean[]>;
}

/**
 * The next prompt of a session; the same for the same material, past and seed. First a need whose last try went wrong, once
 * two other prompts have passed since it was asked for; then, in every third prompt, a known one; else of the first ten that
 * still have to be worked at the one that was asked for least. A tie goes to the one that comes first in the ranking. Null
 * where there is nothing to practise.
 */
export function nextPrompt(material: DrillMaterial, past: DrillPast, seed: number): Prompt | null {
  const random = randomLcg(fraction(seed, past.prompts.length));
  // The first draws of neighbouring seeds are alike.
  for (let skip = 0; skip < 3; skip++) random();
  const { ranked, groups } = material;
  const wished = groups === null ? ranked : ranked.filter(({ group }) => groups.includes(group));
  const focus = focusOf(wished, past, random);
  return focus === null ? null : promptFor(focus, material, random);
}

/** A seed of its own for each prompt: by the golden ratio they lie far apart. */
function fraction(seed: number, at: number): number {
  return (seed + (at + 1) * 0.618033988749895) % 1;
}

function focusOf(ranked: readonly RankedNeed[], past: DrillPast, random: () => number): RankedNeed | null {
  const again = wrongOnes(ranked, past)[0];
  if (again !== undefined) return again;
  const known = ranked.filter(({ standing }) => standing === 'known');
  const isMixTurn = past.prompts.length % MIX === MIX - 1;
  const mixed = isMixTurn ? known[Math.floor(random() * known.length)] : undefined;
  if (mixed !== undefined) return mixed;
  const work = ranked.filter(({ text, standing }) => standing !== 'known' && !isEnough(past, text));
  return leastAsked(work.slice(0, AT_WORK), past) ?? leastAsked(ranked, past);
}

function wrongOnes(ranked: readonly RankedNeed[], past: DrillPast): readonly RankedNeed[] {
  const recent = new Set(past.prompts.slice(-AGAIN_AFTER).map(({ focus }) => focus));
  return ranked.filter(({ text }) => past.tries.get(text)?.at(-1) === false && !recent.has(text));
}

function isEnough(past: DrillPast, text: string): boolean {
  const tries = past.tries.get(text) ?? [];
  return tries.length >= ENOUGH && tries.slice(-ENOUGH).every((right) => right);
}

function leastAsked(needs: readonly RankedNeed[], past: DrillPast): RankedNeed | null {
  const asked = new Map<string, number>();
  for (const { focus } of past.prompts) asked.set(focus, (asked.get(focus) ?? 0) + 1);
  let least: RankedNeed | null = null;
  for (const need of needs) {
    if (least === null || (asked.get(need.text) ?? 0) < (asked.get(least.text) ?? 0)) least = need;
  }
  return least;
}

function promptFor(focus: RankedNeed, material: DrillMaterial, random: () => number): Prompt {
  const about = { focus: focus.text, standing: focus.standing };
  const needs = companyOfNeed(focus.need, material, random);
  if (needs !== null) return { ...about, needs: needs.map(needText), shape: 'company' };
  const between = transitionOf(focus, material, random);
  if (between !== null) return { ...about, needs: between, shape: 'transition' };
  return { ...about, needs: [focus.text], shape: 'alone' };
}

/** So many pieces of the text are drawn, of which the one with the fewest strangers is taken. */
const DRAWS = 4;

/**
 * Characters in the company that they keep; Enter and Tab are asked for as transitions. Of a few pieces of the text the one is
 * taken that asks for the fewest needs which are neither known nor in work; of equals the first.
 */
function companyOfNeed(need: Need, { ranked, company }: DrillMaterial, random: () => number) {
  const char = need.kind === 'char' ? need.char : null;
  if (char === null || company === null) return null;
  const standings = new Map(
    ranked.map(({ need, standing }) => [need.kind === 'char' ? need.char : '', standing]),
  );
  const work = new Set(ranked.slice(0, AT_WORK).map(({ text }) => text));
  const isStranger = (each: string) => standings.get(each) === 'new' && !work.has(each) && each !== char;
  let best: { readonly chars: readonly string[]; readonly strangers: number } | null = null;
  for (let draw = 0; draw < DRAWS; draw++) {
    const chars = drawCompany(company, char, (each) => standings.has(each), PROMPT_LENGTH, random);
    const strangers = chars?.filter(isStranger).length ?? 0;
    if (chars !== null && (best === null || strangers < best.strangers)) best = { chars, strangers };
  }
  return best === null ? null : best.chars.map(needOfCharacter);
}

/** From how many of the most frequent letters those around a transition are drawn. */
const COMMON_LETTERS = 8;

/**
 * A need between two frequent letters: the way to its layer or chord and back. Shortcuts, and what already lies where the
 * letters do, stand alone.
 */
function transitionOf(
  focus: RankedNeed,
  material: DrillMaterial,
  random: () => number,
): readonly string[] | null {
  if (focus.need.kind === 'shortcut') return null;
  const isPlain = focus.route.cost.presses === 1 && focus.group !== 'keys';
  const letters = commonLetters(material).filter((text) => text !== focus.text);
  if (isPlain || letters.length < 2) return null;
  const draw = () => letters[Math.floor(random() * letters.length)] ?? '';
  return [draw(), focus.text, draw()];
}

function commonLetters({ ranked, company }: DrillMaterial): readonly string[] {
  const plain = ranked.filter(
    ({ group, route, text }) => group === 'letters' && route.cost.presses === 1 && text !== ' ',
  );
  const order = new Map(company?.counts.after.get('')?.map(({ char }, at) => [char, at]));
  const place = ({ need, text }: RankedNeed) => order.get(characterOfNeed(need) ?? text) ?? order.size;
  return plain
    .toSorted((one, other) => place(one) - place(other) || (one.text < other.text ? -1 : 1))
    .slice(0, COMMON_LETTERS)
    .map(({ text }) => text);
}
