import type { Act, ModifierSet, Sign } from './act.ts';
import type { Plan } from './plan.ts';

/**
 * Whether a design has the means for a stroke at all: a place or chord that gives its code, and modifiers for what is
 * missing around it. A need without means is missing, and no search has to show it.
 */
export function canMake(plan: Plan): (sign: Sign) => boolean {
  const around = new Map<number, Set<ModifierSet>>();
  let modifiers: ModifierSet = 0;
  const look = (act: Act | null): void => {
    if (act === null) return;
    if (act.kind === 'modifiers' || act.kind === 'modifier') modifiers |= act.set;
    if (act.kind !== 'type') return;
    for (const sign of act.signs) {
      const code = sign >> 8;
      const sets = around.get(code);
      if (sets === undefined) around.set(code, new Set([sign & 255]));
      else sets.add(sign & 255);
    }
  };
  for (const layer of plan.bindings) {
    for (const binding of layer) {
      look(binding?.tap ?? null);
      look(binding?.hold ?? null);
    }
  }
  for (const chord of plan.chords) look(chord.act);
  return (sign) => {
    const set = sign & 255;
    for (const own of around.get(sign >> 8) ?? []) {
      if ((own & ~set) === 0 && (set & ~own & ~modifiers) === 0) return true;
    }
    return false;
  };
}
