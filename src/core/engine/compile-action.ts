import type { HostLayout, Stroke } from '../host/host-layout.ts';
import { CODES, type Code, isModifier } from '../keymap/codes.ts';
import type { Action, LayerId, ShiftedAction } from '../keymap/types.ts';
import { type ActionKind, BACK, type CodeNumber, type CompiledAction, LIFT } from './compiled.ts';
import { continuesWord, isCapitalised } from './word.ts';

const numbers: ReadonlyMap<Code, CodeNumber> = new Map(CODES.map((code, index) => [code, index]));

/** A code by its place in `CODES`. */
export function codeNumber(code: Code): CodeNumber {
  return numbers.get(code) ?? -1;
}

function action(kind: ActionKind, parts: Partial<CompiledAction>): CompiledAction {
  return {
    kind,
    types: parts.types ?? false,
    onPress: parts.onPress ?? [],
    onRelease: parts.onRelease ?? [],
    target: parts.target ?? -1,
    without: parts.without ?? [],
    shifted: parts.shifted ?? null,
    inWord: parts.inWord ?? 'ends',
  };
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

/** What an action sends: `held` stays down as long as its key, where there is one. */
interface Typing {
  readonly before: readonly Stroke[];
  readonly held: Stroke | undefined;
  readonly without: readonly string[];
}

/** Strokes of which the last is held, as for `key` and `char`. */
function holding(strokes: readonly Stroke[]): Typing {
  return { before: strokes.slice(0, -1), held: strokes.at(-1), without: [] };
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
const SHIFT = codeNumber('ShiftLeft');
const LAYER_KINDS = { 'while-held': 'layer-held', latch: 'layer-latch', lock: 'layer-lock' } as const;

function hasShift(stroke: Stroke): boolean {
  return stroke.with.some((code) => code === 'ShiftLeft' || code === 'ShiftRight');
}

/** Looks up what actions need, for one keymap and host layout. */
export class ActionCompiler {
  private readonly layers: ReadonlyMap<LayerId, number>;
  private readonly host: HostLayout;
  private readonly withWords: boolean;

  /** withWords: whether Shift for one word can come on at all. */
  constructor(layers: ReadonlyMap<LayerId, number>, host: HostLayout, withWords: boolean) {
    this.layers = layers;
    this.host = host;
    this.withWords = withWords;
  }

  /**
   * An action, and what comes in its place under Shift. A layer that does not exist, and the base layer, which is
   * always on, make an action that does nothing: reading refuses both, but a design may be played before it is read.
   */
  compile(source: Action, onShift?: ShiftedAction): CompiledAction {
    const plain = this.plain(source);
    return onShift === undefined ? plain : { ...plain, shifted: this.lifted(onShift) };
  }

  private plain(source: Action): CompiledAction {
    switch (source.do) {
      case 'key':
      case 'char':
      case 'text':
        return this.typing(source);
      case 'layer': {
        const target = this.layers.get(source.layer) ?? 0;
        return target === 0 ? SILENT : action(LAYER_KINDS[source.mode], { target });
      }
      case 'modifier':
        return action(source.mode === 'latch' ? 'modifier-latch' : 'modifier-lock', {
          target: codeNumber(source.code),
        });
      case 'repeat':
      case 'word-shift':
        return action(source.do, {});
      default:
        return SILENT;
    }
  }

  private strokesOf(source: Action): Typing {
    switch (source.do) {
      case 'key':
        return holding([{ code: source.code, with: source.with ?? [] }]);
      case 'char':
        return this.charStrokes(source.char);
      case 'text':
        return this.textStrokes(source.text);
      default:
        return holding([]);
    }
  }

  /** A2: the first route; none: it types nothing but is still an action that types (rule L2 goes by the kind of action). */
  private charStrokes(char: string): Typing {
    const route = this.host.routesOf(char)[0];
    return route === undefined ? { before: [], held: undefined, without: [char] } : holding(route);
  }

  /** A3. A character is what it is in a `char` action: one grapheme cluster in NFC. Those without a route are left out. */
  private textStrokes(text: string): Typing {
    const before: Stroke[] = [];
    const without: string[] = [];
    for (const { segment } of graphemes.segment(text)) {
      const char = segment.normalize('NFC');
      const route = this.host.routesOf(char)[0];
      if (route === undefined) without.push(char);
      else before.push(...route);
    }
    return { before, held: undefined, without };
  }

  private typing(source: Extract<Action, { do: 'key' | 'char' | 'text' }>): CompiledAction {
    const types = source.do !== 'key' || !isModifier(source.code);
    const typing = this.strokesOf(source);
    const { before, held, without } = typing;
    const presses = held === undefined ? [] : pressesOf(held);
    return action('emit', {
      types,
      without,
      onPress: [...before.flatMap(pressedAndReleased), ...presses],
      onRelease: presses.toReversed(),
      inWord: types ? this.wordForm(typing) : 'ends',
    });
  }

  /** A10: Shift goes around the press of what has a capital, and is up again before the next key can come. */
  private wordForm({ before, held, without }: Typing): CompiledAction | 'ends' | 'stays' {
    if (!this.withWords) return 'ends';
    const strokes = held === undefined ? before : [...before, held];
    if (!strokes.every((stroke) => continuesWord(stroke, this.host))) return 'ends';
    if (!strokes.some((stroke) => isCapitalised(stroke, this.host))) return 'stays';
    const around = (stroke: Stroke, steps: readonly number[]) =>
      isCapitalised(stroke, this.host) ? [SHIFT, ...steps, ~SHIFT] : steps;
    const presses = held === undefined ? [] : pressesOf(held);
    return action('emit', {
      types: true,
      without,
      onPress: [
        ...before.flatMap((stroke) => around(stroke, pressedAndReleased(stroke))),
        ...(held === undefined ? [] : around(held, presses)),
      ],
      onRelease: presses.toReversed(),
    });
  }

  /** A8: each stroke without a Shift of its own is pressed with every other Shift lifted. */
  private lifted(source: ShiftedAction): CompiledAction {
    if (source.do === 'nothing') return SILENT;
    const { before, held, without } = this.strokesOf(source);
    const strokes = held === undefined ? before : [...before, held];
    const aside = (stroke: Stroke) => (hasShift(stroke) ? BACK : LIFT);
    const presses = held === undefined ? [] : pressesOf(held);
    const goesOn = this.withWords && strokes.every((stroke) => continuesWord(stroke, this.host));
    return action('lifted', {
      types: true,
      without,
      onPress: [
        ...before.flatMap((stroke) => [aside(stroke), ...pressedAndReleased(stroke)]),
        ...(held === undefined ? [] : [aside(held), ...presses]),
      ],
      onRelease: presses.toReversed(),
      inWord: goesOn ? 'stays' : 'ends',
    });
  }
}
