import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/core/findings/facts.ts';
import type { Rule } from '../../../src/core/findings/rule.ts';
import { characterWithoutRoute } from '../../../src/core/findings/rules/character-without-route.ts';
import { layerNeverEntered } from '../../../src/core/findings/rules/layer-never-entered.ts';
import { letterHoldUnprotected } from '../../../src/core/findings/rules/letter-hold-unprotected.ts';
import { modifierMissing } from '../../../src/core/findings/rules/modifier-missing.ts';
import { needMissing } from '../../../src/core/findings/rules/need-missing.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Binding, Chord, Keymap } from '../../../src/core/keymap/types.ts';
import { edited } from '../keymap/edits.ts';
import { chord, design, inShort, type Sketch } from './design.ts';

const base = 'a b c d ShiftLeft f AltLeft MetaLeft i Space';
const shortOf = (rule: Rule, keymap: Keymap) => inShort(rule.check(factsOf(keymap, usHost)));

function withChord(sketch: Sketch, more: Partial<Chord>): Keymap {
  const keymap = design({ ...sketch, chords: [chord('c', 'L1 L2', 45, 'Tab')] });
  return { ...keymap, chords: keymap.chords?.map((one) => ({ ...one, ...more })) ?? [] };
}

function withBinding(sketch: Sketch, key: string, more: Partial<Binding>): Keymap {
  const keymap = design(sketch);
  const [first, ...others] = keymap.layers;
  const binding = first?.places[key];
  if (first === undefined || binding === undefined) throw new Error(`nothing at ${key}`);
  return {
    ...keymap,
    layers: [{ ...first, places: { ...first.places, [key]: { ...binding, ...more } } }, ...others],
  };
}

describe('findings know of the later fields', () => {
  it('a chord’s hold gives a modifier', () => {
    expect(shortOf(modifierMissing, design({ layers: { base } }))).toHaveLength(1);
    expect(
      shortOf(modifierMissing, withChord({ layers: { base } }, { hold: { do: 'key', code: 'ControlLeft' } })),
    ).toEqual([]);
  });

  it('a modifier that is only the tap of a chord that any press inside makes a hold is none', () => {
    const tap = { action: { do: 'key', code: 'ControlLeft' } } as const;
    expect(shortOf(modifierMissing, withChord({ layers: { base } }, tap))).toEqual([]);
    const both = { ...tap, hold: { do: 'key', code: 'Enter' }, holdBy: 'press-inside' } as const;
    expect(shortOf(modifierMissing, withChord({ layers: { base } }, both))).toHaveLength(1);
  });

  it('a chord’s hold enters a layer', () => {
    const sketch: Sketch = { layers: { base, up: '1 2 3 4 5 6 7 8 9 0' } };
    expect(shortOf(layerNeverEntered, withChord(sketch, {}))).toHaveLength(1);
    expect(
      shortOf(
        layerNeverEntered,
        withChord(sketch, { hold: { do: 'layer', layer: 'up', mode: 'while-held' } }),
      ),
    ).toEqual([]);
  });

  it('a need that comes under Shift only is reached; one whose Shift means something else is missing', () => {
    const sketch: Sketch = { layers: { base }, needs: [';', 'F'] };
    expect(shortOf(needMissing, design(sketch))).toHaveLength(1);
    const keymap = withBinding(sketch, 'R3', { onShift: { do: 'char', char: ';' } });
    expect(factsOf(keymap, usHost).needs.map(({ route }) => route !== null)).toEqual([true, false]);
  });

  it('a letter that is a tap when held alone is no unprotected one, but where any press inside makes it a hold', () => {
    const sketch: Sketch = { layers: { base: base.replace('a', 'a⇩ControlLeft') } };
    expect(shortOf(letterHoldUnprotected, design(sketch))).toHaveLength(1);
    expect(shortOf(letterHoldUnprotected, withBinding(sketch, 'L1', { tapIfAlone: true }))).toEqual([]);
    const inside = { tapIfAlone: true, holdBy: 'press-inside' } as const;
    expect(shortOf(letterHoldUnprotected, withBinding(sketch, 'L1', inside))).toHaveLength(1);
  });

  it('a character without a route is found under Shift and on a chord’s hold, and its mend makes that blank', () => {
    const under = withBinding({ layers: { base } }, 'L1', { onShift: { do: 'char', char: 'ł' } });
    const held = withChord({ layers: { base } }, { hold: { do: 'char', char: 'ł' } });
    for (const keymap of [under, held]) {
      const [finding, ...others] = characterWithoutRoute.check(factsOf(keymap, usHost));
      expect([finding?.severity, others]).toEqual(['broken', []]);
      const edits = finding?.mends[0]?.edits ?? [];
      const mended = edited(keymap, { edit: 'several', title: 'Take it', edits }).keymap;
      expect(characterWithoutRoute.check(factsOf(mended, usHost))).toEqual([]);
    }
  });
});
