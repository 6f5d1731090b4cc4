import type { HostLayout, Stroke } from '../host/host-layout.ts';
import { CODES, type Code, isModifier } from '../keymap/codes.ts';
import type { Action, LayerId } from '../keymap/types.ts';
import type { ActionKind, CodeNumber, CompiledAction } from './compiled.ts';

const numbers: ReadonlyMap<Code, CodeNumber> = new Map(CODES.map((code, index) => [code, index]));

function codeNumber(code: Code): CodeNumber {
  return numbers.get(code) ?? -1;
}

function action(kind: ActionKind, parts: Partial<CompiledAction>): CompiledAction {
  return { kind, types: false, onPress: [], onRelease: [], target: -1, without: [], ...parts };
}

const SILENT = action('silent', {});

/** Press order of one stroke: its modifiers, then its code (rule A1). Released in reverse: the code first. */
function pressesOf(stroke: Stroke): CodeNumber[] {
  return [...stroke.with, stroke.code].map(codeNumber);
}

function pressedAndReleased(stroke: Stroke): number[] {
  const presses = pressesOf(stroke);
  return [...presses, ...presses.toReversed().map((code) => ~code)];
}

function typing(strokes: readonly Stroke[], types: boolean): CompiledAction {
  const last = strokes.at(-1);
  if (last === undefined) return action('emit', { types });
  const held = pressesOf(last);
  const before = strokes.slice(0, -1).flatMap(pressedAndReleased);
  return action('emit', { types, onPress: [...before, ...held], onRelease: held.toReversed() });
}

/** A2: the first route; none: it types nothing but is still an action that types (rule L2 goes by the kind of action). */
function charAction(char: string, host: HostLayout): CompiledAction {
  const route = host.routesOf(char)[0];
  return route === undefined ? action('emit', { types: true, without: [char] }) : typing(route, true);
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A3. A character is what it is in a `char` action: one grapheme cluster in NFC. Those without a route are left out. */
function textAction(text: string, host: HostLayout): CompiledAction {
  const onPress: number[] = [];
  const without: string[] = [];
  for (const { segment } of graphemes.segment(text)) {
    const char = segment.normalize('NFC');
    const route = host.routesOf(char)[0];
    if (route === undefined) without.push(char);
    else onPress.push(...route.flatMap(pressedAndReleased));
  }
  return action('emit', { types: true, onPress, without });
}

const LAYER_KINDS = { 'while-held': 'layer-held', latch: 'layer-latch', lock: 'layer-lock' } as const;

/**
 * Looks up what an action needs. A layer that does not exist, and the base layer, which is always on, make an action that
 * does nothing: reading refuses both, but a design may be played before it is read.
 */
export function compileAction(
  source: Action,
  layers: ReadonlyMap<LayerId, number>,
  host: HostLayout,
): CompiledAction {
  switch (source.do) {
    case 'key':
      return typing([{ code: source.code, with: source.with ?? [] }], !isModifier(source.code));
    case 'char':
      return charAction(source.char, host);
    case 'text':
      return textAction(source.text, host);
    case 'layer': {
      const target = layers.get(source.layer) ?? 0;
      return target === 0 ? SILENT : action(LAYER_KINDS[source.mode], { target });
    }
    case 'modifier':
      return action(source.mode === 'latch' ? 'modifier-latch' : 'modifier-lock', {
        target: codeNumber(source.code),
      });
    default:
      return SILENT;
  }
}
