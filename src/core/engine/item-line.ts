import type { Subject } from './compiled.ts';

const FIRST_ROOM = 64;

/**
 * Stage 2's queue and its work list in one. Items never change their order, so the queue is simply the part before the
 * cursor and the work list the part after it: taking an item into the queue moves the cursor on, putting the queue in
 * front of what is left (rule S2) moves it back. Nothing is copied except when the room runs out.
 */
export class ItemLine {
  private head = 0;
  private cursor = 0;
  private tail = 0;
  /** Subject × 2, plus 1 for an up. */
  private what = new Int32Array(FIRST_ROOM);
  private time = new Float64Array(FIRST_ROOM);
  private prev = new Float64Array(FIRST_ROOM);

  /** Whether the work list is empty. */
  get done(): boolean {
    return this.cursor === this.tail;
  }

  get subject(): Subject {
    return (this.what[this.cursor] ?? 0) >> 1;
  }

  get isUp(): boolean {
    return ((this.what[this.cursor] ?? 0) & 1) === 1;
  }

  /** Physical time of the item in front of the work list, ms. */
  get t(): number {
    return this.time[this.cursor] ?? 0;
  }

  /** Physical time of the down before it in stage 2's order, ms; -Infinity where there is none. */
  get previousDown(): number {
    return this.prev[this.cursor] ?? 0;
  }

  push(subject: Subject, isUp: boolean, t: number, previousDown: number): void {
    if (this.tail === this.what.length) this.makeRoom();
    const at = this.tail++;
    this.what[at] = (subject << 1) | (isUp ? 1 : 0);
    this.time[at] = t;
    this.prev[at] = previousDown;
  }

  /** The item in front of the work list joins the queue. */
  enqueue(): void {
    this.cursor++;
  }

  /** The item in front of the work list is done with; the queue is empty at that moment. */
  drop(): void {
    this.cursor++;
    this.head = this.cursor;
    if (this.head < this.tail) return;
    this.head = 0;
    this.cursor = 0;
    this.tail = 0;
  }

  /** The queue goes in front of the work list. */
  requeue(): void {
    this.cursor = this.head;
  }

  /** Moves what is left to the front; doubles the room when that frees less than half, so a push stays cheap on average. */
  private makeRoom(): void {
    const { head, tail } = this;
    if (head < this.what.length / 2) {
      this.what = grown(this.what, new Int32Array(tail * 2));
      this.time = grown(this.time, new Float64Array(tail * 2));
      this.prev = grown(this.prev, new Float64Array(tail * 2));
    }
    this.what.copyWithin(0, head, tail);
    this.time.copyWithin(0, head, tail);
    this.prev.copyWithin(0, head, tail);
    this.cursor -= head;
    this.tail -= head;
    this.head = 0;
  }
}

function grown<List extends Int32Array | Float64Array>(from: List, to: List): List {
  to.set(from);
  return to;
}
