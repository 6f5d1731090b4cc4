import type { KeyEvent } from '../base/key-event.ts';
import type { LayerId } from '../keymap/types.ts';
import { Act } from './act.ts';
import type { Compiled } from './compiled.ts';
import { Decisions } from './decisions.ts';
import { Explainer } from './explain.ts';
import { Gather } from './gather.ts';
import { Settle } from './settle.ts';
import { StreamCheck } from './stream-check.ts';
import type { Engine, Sink } from './types.ts';

/** The three stages in a row and the clock that they share (rules I3 and I4). */
class StagedEngine implements Engine {
  private readonly compiled: Compiled;
  private readonly check: StreamCheck;
  private readonly act: Act;
  private readonly settle: Settle;
  private readonly gather: Gather;
  private now = -Infinity;

  constructor(compiled: Compiled, sink: Sink) {
    const explain = explainerOf(compiled, sink);
    this.compiled = compiled;
    this.check = new StreamCheck(compiled);
    this.act = new Act(compiled, sink, explain);
    this.settle = new Settle(compiled, this.act, explain);
    this.gather = new Gather(compiled, this.act.layers, this.settle, explain);
  }

  feed(event: KeyEvent): string | undefined {
    const key = this.check.keyOf(event);
    if (key < 0) return this.check.reason(event);
    const { t } = event;
    this.runTimers(t);
    this.check.accept(key, event);
    if (t > this.now) this.now = t;
    if (event.type === 'down') this.gather.down(key, t, this.now);
    else this.gather.up(key, t, this.now);
    return undefined;
  }

  advanceTo(t: number): void {
    this.runTimers(t);
    if (Number.isFinite(t)) this.check.notBefore(t);
    else this.check.notBefore(this.now);
  }

  finish(): void {
    this.runTimers(Infinity);
    this.check.notBefore(this.now);
  }

  layersOn(): readonly LayerId[] {
    return this.compiled.layerIds.filter((_, index) => (this.act.layers.on & (1 << index)) !== 0);
  }

  /**
   * Handles the timers due before t in order of their time. There is never more than one to choose from: while something
   * waits in stage 1 the open key's timer is put off (rule S8).
   */
  private runTimers(t: number): void {
    for (;;) {
      const gathers = this.gather.due !== Infinity;
      const due = gathers ? this.gather.due : this.settle.due;
      if (!(due < t)) return;
      if (due > this.now) this.now = due;
      if (gathers) this.gather.timer(this.now);
      else {
        this.settle.timer(this.now);
        this.settle.work(this.now);
      }
    }
  }
}

function explainerOf(compiled: Compiled, sink: Sink): Explainer | null {
  if (sink.decided !== undefined)
    return new Decisions(compiled, (what, subject, t) => sink.decided?.(what, subject, t));
  return sink.trace === undefined ? null : new Explainer(compiled, (entry) => sink.trace?.(entry));
}

/** An engine at rest, base layer on, that says what it does to a sink. Whether it makes a trace is decided here, once. */
export function createEngine(compiled: Compiled, sink: Sink): Engine {
  return new StagedEngine(compiled, sink);
}
