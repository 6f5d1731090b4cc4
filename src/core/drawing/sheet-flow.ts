import type { Mark } from './sheet-marks.ts';

/** Something of a fixed height that stands in a column. */
export interface Block {
  readonly height: number;
  /** The block should not stand at the foot of a column without the one that follows it. */
  readonly keepsWithNext?: boolean;
  /** Air that is only wanted under something else: at the top of a column it is left out. */
  readonly above?: number;
  /** Its marks with their upper left corner at `x`, `y`, mm on the page. */
  readonly draw: (x: number, y: number) => readonly Mark[];
}

/** A column of a page that text can run down, mm. */
export interface Lane {
  readonly page: number;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

/** The lane after so many others: every page has more of them. */
export type LaneAt = (index: number) => Lane;

/** Marks by the page that they fell on. */
export interface Flowed {
  readonly page: number;
  readonly marks: readonly Mark[];
}

/** Sections in their places. */
interface Layout {
  readonly placed: readonly {
    readonly block: Block;
    readonly page: number;
    readonly x: number;
    readonly y: number;
  }[];
  readonly lastPage: number;
  /** Sections that run over more than one column. */
  readonly broken: number;
}

/**
 * Puts sections into lanes: each whole into the first lane that has room for it on the pages begun so far, else broken
 * from the last one on. On the last page the columns end as high up as they can without breaking more sections, so
 * that they come out even. A block higher than every lane stands at the top of one all the same.
 */
export function flow(sections: readonly (readonly Block[])[], laneAt: LaneAt): readonly Flowed[] {
  let best = laidOut(sections, laneAt);
  const { lastPage, broken } = best;
  const evened = (cut: number): LaneAt => {
    return (index) => {
      const lane = laneAt(index);
      return lane.page === lastPage ? { ...lane, bottom: lane.bottom - cut } : lane;
    };
  };
  const { top, bottom } = laneAt(0);
  // Halving the step leaves less than half a millimetre to be won.
  for (let step = (bottom - top) / 2, cut = 0; step > 0.5; step /= 2) {
    const tried = laidOut(sections, evened(cut + step));
    if (tried.lastPage !== lastPage || tried.broken > broken) continue;
    best = tried;
    cut += step;
  }
  return best.placed.map(({ block, page, x, y }) => ({ page, marks: block.draw(x, y) }));
}

function laidOut(sections: readonly (readonly Block[])[], laneAt: LaneAt): Layout {
  const lanes = new Lanes(laneAt);
  let broken = 0;
  for (const section of sections) {
    const fitting = lanes.firstWithRoomFor(section);
    if (fitting === null) broken += 1;
    if (fitting === null) lanes.run(section);
    else for (const block of section) lanes.put(block, fitting);
  }
  return { placed: lanes.placed, lastPage: lanes.lastPage, broken };
}

/** Lanes beside boards may be too low for a block; a later page has higher ones. */
const MOST_TRIES = 16;

/** How far down each lane is filled. */
class Lanes {
  readonly placed: { block: Block; page: number; x: number; y: number }[] = [];
  readonly #laneAt: LaneAt;
  readonly #filled = new Map<number, number>();
  #last = 0;

  constructor(laneAt: LaneAt) {
    this.#laneAt = laneAt;
  }

  get lastPage(): number {
    return this.#laneAt(this.#last).page;
  }

  /** The first lane of the pages begun so far that has room for the whole section. */
  firstWithRoomFor(section: readonly Block[]): number | null {
    for (let index = 0; this.#laneAt(index).page <= this.lastPage; index += 1) {
      if (this.#hasRoom(index, heightOf(section), section[0]?.above ?? 0)) return index;
    }
    return null;
  }

  /** Puts a block under what stands in a lane already. */
  put(block: Block, index: number): void {
    const lane = this.#laneAt(index);
    const top = this.#filled.get(index) ?? lane.top;
    const y = top > lane.top ? top + (block.above ?? 0) : top;
    this.placed.push({ block, page: lane.page, x: lane.x, y });
    this.#filled.set(index, y + block.height);
    this.#last = Math.max(this.#last, index);
  }

  /** Runs blocks down the last lane and on into further ones. */
  run(blocks: readonly Block[]): void {
    let index = this.#last;
    blocks.forEach((block, at) => {
      const follows = at > 0 && blocks[at - 1]?.keepsWithNext === true;
      const needed = follows ? block.height : chainHeight(blocks, at);
      if (!this.#hasRoom(index, needed, block.above ?? 0) && this.#filled.has(index)) index += 1;
      for (let tries = 0; !this.#hasRoom(index, block.height, 0) && tries < MOST_TRIES; tries += 1)
        index += 1;
      this.put(block, index);
    });
  }

  #hasRoom(index: number, height: number, above: number): boolean {
    const { top, bottom } = this.#laneAt(index);
    const filled = this.#filled.get(index) ?? top;
    return (filled > top ? filled + above : filled) + height <= bottom;
  }
}

/** The height of blocks without the air above the first of them. */
function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { height, above = 0 }, at) => sum + height + (at === 0 ? 0 : above), 0);
}

/** The height of a block with all that should stand under it in the same column. */
function chainHeight(blocks: readonly Block[], from: number): number {
  const rest = blocks.slice(from);
  const end = rest.findIndex(({ keepsWithNext }) => keepsWithNext !== true);
  return heightOf(end < 0 ? rest : rest.slice(0, end + 1));
}
