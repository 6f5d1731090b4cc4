import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ItemLine } from '../../../src/core/engine/item-line.ts';

interface Item {
  readonly subject: number;
  readonly isUp: boolean;
  readonly t: number;
  readonly previousDown: number;
}

/** The same by two plain arrays, as the timing rules put it. */
class TwoLists {
  private queue: Item[] = [];
  private work: Item[] = [];

  get front(): Item | undefined {
    return this.work[0];
  }

  get queued(): number {
    return this.queue.length;
  }

  push(item: Item): void {
    this.work.push(item);
  }

  enqueue(): void {
    this.queue.push(...this.work.splice(0, 1));
  }

  drop(): void {
    this.work.splice(0, 1);
  }

  requeue(): void {
    this.work = [...this.queue, ...this.work];
    this.queue = [];
  }
}

function frontOf(line: ItemLine): Item | undefined {
  if (line.done) return undefined;
  const { subject, isUp, t, previousDown } = line;
  return { subject, isUp, t, previousDown };
}

const command = fc.oneof(
  { weight: 5, arbitrary: fc.constant('push' as const) },
  { weight: 3, arbitrary: fc.constant('enqueue' as const) },
  { weight: 3, arbitrary: fc.constant('drop' as const) },
  { weight: 1, arbitrary: fc.constant('requeue' as const) },
);

test('the line does what a queue and a work list of their own would do, also when its room runs out', () => {
  const commands = fc.array(command, { maxLength: 1500, size: 'max' });
  const law = fc.property(commands, (all) => {
    const line = new ItemLine();
    const lists = new TwoLists();
    for (const [index, one] of all.entries()) {
      const item = { subject: index % 7, isUp: index % 3 === 0, t: index / 4, previousDown: index / 8 };
      if (one === 'push') {
        line.push(item.subject, item.isUp, item.t, item.previousDown);
        lists.push(item);
      } else if (one === 'requeue') {
        line.requeue();
        lists.requeue();
      } else if (lists.front !== undefined && (one === 'enqueue' || lists.queued === 0)) {
        line[one]();
        lists[one]();
      }
      expect(frontOf(line)).toEqual(lists.front);
    }
  });
  fc.assert(law, { numRuns: 100 });
});
