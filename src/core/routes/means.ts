import type { Act, ModifierSet, Sign } from './act.ts';
import { actsOfBinding, type Plan } from './plan.ts';

/** What a design can make at all, wherever the places are. What it cannot make is missing, and no search has to show it. */
export interface Means {
  /** Whether some action has this stroke, with the modifiers that there are for what is missing around it. */
  canMake(sign: Sign): boolean;
  /** Whether a sequence of strokes, each with all signs that serve, can be put together from whole actions. */
  canMakeAll(sequence: readonly (readonly Sign[])[]): boolean;
}

/** Looks a design's actions through, once for all needs. */
export function meansOf(plan: Plan): Means {
  const acts = [...actsOf(plan)];
  const modifiers = acts.reduce<ModifierSet>(
    (set, act) => (act.kind === 'modifiers' || act.kind === 'modifier' ? set | act.set : set),
    0,
  );
  const typing = acts.flatMap((act) => (act.kind === 'type' ? [act.signs] : []));
  const runs = typing.filter((signs) => signs.length > 1);
  const any = makerOf(typing.flat(), modifiers);
  const alone = makerOf(
    typing.flatMap((signs) => (signs.length === 1 ? signs : [])),
    modifiers,
  );
  return {
    canMake: any,
    canMakeAll(sequence) {
      const reached = new Set([0]);
      for (const from of sequence.keys()) {
        if (!reached.has(from)) continue;
        if (sequence[from]?.some(alone)) reached.add(from + 1);
        for (const signs of runs) {
          const serves = (own: Sign, at: number) =>
            sequence[from + at]?.some((sign) => serve(own, sign, modifiers)) ?? false;
          if (signs.every(serves)) reached.add(from + signs.length);
        }
      }
      return reached.has(sequence.length);
    },
  };
}

function* actsOf(plan: Plan): Generator<Act> {
  for (const layer of plan.bindings) {
    for (const binding of layer) {
      if (binding) yield* actsOfBinding(binding);
    }
  }
  for (const { binding } of plan.chords) yield* actsOfBinding(binding);
}

function makerOf(signs: readonly Sign[], modifiers: ModifierSet): (sign: Sign) => boolean {
  const byCode = new Map<number, Set<Sign>>();
  for (const sign of signs) {
    const known = byCode.get(sign >> 8);
    if (known === undefined) byCode.set(sign >> 8, new Set([sign]));
    else known.add(sign);
  }
  return (sign) => [...(byCode.get(sign >> 8) ?? [])].some((own) => serve(own, sign, modifiers));
}

/** Whether an action's stroke becomes the one wanted once the missing modifiers are held around it. */
function serve(own: Sign, sign: Sign, modifiers: ModifierSet): boolean {
  const missing = (sign & ~own & 255 & ~modifiers) === 0;
  return own >> 8 === sign >> 8 && (own & ~sign & 255) === 0 && missing;
}
