import type { OutputEvent } from '../../../../src/core/engine/types.ts';
import type { HostLayout, Stroke } from '../../../../src/core/host/host-layout.ts';
import { type Code, isModifier } from '../../../../src/core/keymap/codes.ts';
import type { Action, Keymap } from '../../../../src/core/keymap/types.ts';

interface Latch {
  readonly target: string;
  readonly code: Code | null;
  keyIsUp: boolean;
  /** The press that used it, and whether its own key was up by then. */
  usedBy: object | null;
  usedAfterKeyUp: boolean;
}

interface Press {
  readonly action: Action;
  /** Codes to release, in order. */
  codes: Code[];
  latch: Latch | null;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Stage 3 of the timing rules, to the letter. */
export class LiteralActs {
  readonly output: OutputEvent[] = [];
  private readonly counts = new Map<Code, number>();
  private readonly presses = new Map<unknown, Press>();
  private readonly held: string[] = [];
  private readonly locked = new Set<string>();
  /** In the order of coming on. */
  private latches: Latch[] = [];
  private readonly keymap: Keymap;
  private readonly host: HostLayout;
  private readonly clock: () => number;

  constructor(keymap: Keymap, host: HostLayout, clock: () => number) {
    this.keymap = keymap;
    this.host = host;
    this.clock = clock;
  }

  isOn(layer: string): boolean {
    const at = this.keymap.layers.findIndex((one) => one.id === layer);
    const onWhile = this.keymap.layers[at]?.onWhile;
    return (
      at === 0 ||
      this.held.includes(layer) ||
      this.locked.has(`layer ${layer}`) ||
      this.latches.some((latch) => latch.target === `layer ${layer}`) ||
      (onWhile?.every((lower) => this.isOn(lower)) ?? false)
    );
  }

  highestLayer(): string {
    return this.keymap.layers.findLast((layer) => this.isOn(layer.id))?.id ?? '';
  }

  private pressCode(code: Code): void {
    const count = this.counts.get(code) ?? 0;
    this.counts.set(code, count + 1);
    if (count === 0) this.output.push({ t: this.clock(), type: 'press', code });
  }

  private releaseCode(code: Code): void {
    const count = this.counts.get(code) ?? 0;
    this.counts.set(code, count - 1);
    if (count === 1) this.output.push({ t: this.clock(), type: 'release', code });
  }

  private types(action: Action): boolean {
    return action.do === 'char' || action.do === 'text' || (action.do === 'key' && !isModifier(action.code));
  }

  private turnOff(latches: Latch[]): void {
    for (const latch of latches.toReversed()) {
      this.latches = this.latches.filter((other) => other !== latch);
      if (latch.code !== null) this.releaseCode(latch.code);
    }
  }

  press(source: unknown, action: Action): void {
    const press: Press = { action, codes: [], latch: null };
    this.presses.set(source, press);
    if (!this.types(action)) {
      this.perform(press);
      return;
    }
    this.turnOff(this.latches.filter((l) => l.code !== null && l.usedBy !== null && l.keyIsUp)); // L2 (1)
    this.perform(press); // (2)
    for (const latch of this.latches) {
      if (latch.usedBy !== null) continue;
      latch.usedBy = press; // (3)
      latch.usedAfterKeyUp = latch.keyIsUp;
    }
    this.turnOff(this.latches.filter((l) => l.code === null && l.usedBy !== null && l.keyIsUp)); // (4)
  }

  private stroke(stroke: Stroke): Code[] {
    for (const modifier of stroke.with) this.pressCode(modifier);
    this.pressCode(stroke.code);
    return [stroke.code, ...stroke.with.toReversed()];
  }

  private strokesOf(char: string): readonly Stroke[] {
    return this.host.routesOf(char)[0] ?? [];
  }

  private perform(press: Press): void {
    const { action } = press;
    switch (action.do) {
      case 'key':
        press.codes = this.stroke({ code: action.code, with: action.with ?? [] }); // A1
        return;
      case 'char': {
        const strokes = this.strokesOf(action.char); // A2
        strokes.forEach((stroke, at) => {
          const codes = this.stroke(stroke);
          if (at === strokes.length - 1) press.codes = codes;
          else for (const code of codes) this.releaseCode(code);
        });
        return;
      }
      case 'text':
        for (const { segment } of graphemes.segment(action.text)) {
          for (const stroke of this.strokesOf(segment.normalize('NFC'))) {
            for (const code of this.stroke(stroke)) this.releaseCode(code); // A3
          }
        }
        return;
      case 'layer':
        if (action.mode === 'while-held')
          this.held.push(action.layer); // A4
        else if (action.mode === 'lock') this.toggleLock(`layer ${action.layer}`, null);
        else this.pressLatch(press, `layer ${action.layer}`, null);
        return;
      case 'modifier':
        if (action.mode === 'lock') this.toggleLock(`modifier ${action.code}`, action.code);
        else this.pressLatch(press, `modifier ${action.code}`, action.code);
        return;
      default:
        return; // A6
    }
  }

  /** A5 */
  private toggleLock(target: string, code: Code | null): void {
    if (this.locked.delete(target)) {
      if (code !== null) this.releaseCode(code);
    } else {
      this.locked.add(target);
      if (code !== null) this.pressCode(code);
    }
  }

  /** L1 */
  private pressLatch(press: Press, target: string, code: Code | null): void {
    const unused = this.latches.find((latch) => latch.target === target && latch.usedBy === null);
    if (unused !== undefined) {
      this.turnOff([unused]);
      return;
    }
    const latch: Latch = { target, code, keyIsUp: false, usedBy: null, usedAfterKeyUp: false };
    press.latch = latch;
    this.latches.push(latch);
    if (code !== null) this.pressCode(code);
  }

  release(source: unknown): void {
    const press = this.presses.get(source);
    if (press === undefined) return;
    this.presses.delete(source);
    for (const code of press.codes) this.releaseCode(code);
    if (press.action.do === 'layer' && press.action.mode === 'while-held') {
      this.held.splice(this.held.indexOf(press.action.layer), 1);
    }
    const latch = press.latch;
    if (latch !== null && this.latches.includes(latch)) {
      latch.keyIsUp = true;
      if (latch.usedBy !== null) this.turnOff([latch]); // L3
    }
    this.turnOff(
      this.latches.filter((other) => other.code !== null && other.usedAfterKeyUp && other.usedBy === press), // L4
    );
  }
}
