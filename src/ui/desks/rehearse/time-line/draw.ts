import type { Lane, Mark, Note, Scene } from '../../../../core/rehearse/scene.ts';
import type { Colors } from './colors.ts';
import { bandsOn, barsOn } from './draw-bars.ts';
import { LABELS, type Layout, ROW, RULER } from './layout.ts';
import { pxOf, tickMs, tickText, type View } from './view.ts';

/** A stretch of time to point out, ms. */
export interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
}

/** All that one picture of the time line is made of. */
export interface Picture {
  readonly scene: Scene;
  readonly lanes: readonly Lane[];
  readonly layout: Layout;
  readonly view: View;
  readonly width: number;
  readonly colors: Colors;
  readonly cursorMs: number | null;
  readonly slips: readonly Stretch[];
  /** What the compared run gave. */
  readonly otherNotes: readonly Note[];
  readonly differences: readonly Stretch[];
  /** Up to when keys that are down are drawn, ms. */
  readonly endMs: number;
  /** The reason of a mark in words. */
  readonly wordsOf: (mark: Mark) => string;
}

export type Pen = CanvasRenderingContext2D;

const SMALL = 11;
const OUT = 14;

/** Draws the whole picture anew. */
export function draw(pen: Pen, picture: Picture): void {
  const { width, layout, colors } = picture;
  pen.clearRect(0, 0, width, layout.height);
  pen.save();
  pen.beginPath();
  pen.rect(LABELS, 0, width - LABELS, layout.height);
  pen.clip();
  pen.translate(LABELS, 0);
  stretches(pen, picture);
  grid(pen, picture);
  bandsOn(pen, picture);
  laneLines(pen, picture);
  barsOn(pen, picture);
  ties(pen, picture);
  ground(pen, picture, width - LABELS);
  ruler(pen, picture);
  marks(pen, picture);
  notes(pen, picture, picture.scene.notes, layout.outTop, picture.slips);
  if (layout.otherTop !== null) notes(pen, picture, picture.otherNotes, layout.otherTop, picture.differences);
  cursor(pen, picture);
  pen.restore();
  labels(pen, picture);
  pen.fillStyle = colors.hairline;
  pen.fillRect(LABELS, 0, 1, layout.height);
}

function stretches(pen: Pen, { slips, view, layout, colors }: Picture): void {
  pen.fillStyle = colors['broken-tint'];
  for (const { fromMs, toMs } of slips) {
    const from = pxOf(view, fromMs);
    pen.fillRect(from, RULER, Math.max(3, pxOf(view, toMs) - from), layout.whyTop - RULER);
  }
}

function grid(pen: Pen, { view, width, layout, colors }: Picture): void {
  pen.fillStyle = colors.hairline;
  for (const t of ticks(view, width)) pen.fillRect(Math.round(pxOf(view, t)), 0, 1, layout.whyTop);
}

function ruler(pen: Pen, { view, width, layout, colors }: Picture): void {
  const step = tickMs(view);
  pen.font = `${SMALL}px ${colors.font}`;
  pen.textBaseline = 'middle';
  for (const t of ticks(view, width)) {
    const x = Math.round(pxOf(view, t));
    pen.fillStyle = colors.hairline;
    pen.fillRect(x, layout.scrollTop + RULER - 6, 1, 6);
    pen.fillStyle = colors.muted;
    pen.fillText(tickText(t, step), x + 4, layout.scrollTop + RULER / 2);
  }
}

/** The times of the ruler's ticks, ms. */
function ticks(view: View, width: number): readonly number[] {
  const step = tickMs(view);
  const first = Math.ceil(view.from / step);
  const last = Math.floor((view.from + (width - LABELS) * view.msPerPx) / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => (first + at) * step);
}

/** Under the ruler and the rows, so that lanes scroll away beneath them. */
function ground(pen: Pen, { layout, colors }: Picture, width: number): void {
  pen.fillStyle = colors.paper;
  pen.fillRect(0, layout.scrollTop, width, RULER);
  pen.fillRect(0, layout.whyTop, width, layout.height - layout.whyTop);
  pen.fillStyle = colors.hairline;
  for (const top of [layout.whyTop, layout.outTop, layout.otherTop]) {
    if (top !== null) pen.fillRect(0, top, width, 1);
  }
}

function laneLines(pen: Pen, { lanes, layout, width, colors }: Picture): void {
  for (const [at, { startsFinger, startsHand }] of lanes.entries()) {
    const top = layout.tops[at] ?? 0;
    pen.fillStyle = colors.hairline;
    if (startsFinger && !startsHand) pen.fillRect(0, top - 2, width, 1);
  }
}

/** Lines from the keys down to the decision about them; between the keys of a chord one of its own. */
function ties(pen: Pen, picture: Picture): void {
  const { scene, view } = picture;
  let before = Number.NEGATIVE_INFINITY;
  for (const mark of scene.marks) {
    const x = pxOf(view, mark.t);
    if (x - before < 1 || (view.msPerPx >= TIES_UNTIL && mark.what !== 'chord')) continue;
    before = x;
    tie(pen, picture, mark, x);
  }
}

/** A sign where something was decided, and the reason where there is room for it. */
function marks(pen: Pen, picture: Picture): void {
  const { scene, layout, view, width, colors, wordsOf } = picture;
  pen.font = `${SMALL}px ${colors.font}`;
  pen.textBaseline = 'middle';
  let before = Number.NEGATIVE_INFINITY;
  for (const [at, mark] of scene.marks.entries()) {
    const x = pxOf(view, mark.t);
    // Far off several fall on one another: one of them is drawn.
    if (x - before < 1) continue;
    before = x;
    sign(pen, picture, mark, x, layout.whyTop + ROW / 2);
    const next = scene.marks[at + 1];
    const room = (next === undefined ? width : pxOf(view, next.t)) - x - 22;
    if (room < 60) continue;
    pen.fillStyle = colors.muted;
    pen.fillText(cut(pen, wordsOf(mark), room), x + 10, layout.whyTop + ROW / 2 + 1);
  }
}

/** Where a pixel is longer than this, ms, only the ties of chords are drawn. */
const TIES_UNTIL = 40;

function tie(pen: Pen, { layout, colors }: Picture, mark: Mark, x: number): void {
  const tops = mark.lanes.map((lane) => layout.tops[lane] ?? 0);
  const [first, last] = [tops[0], tops.at(-1)];
  if (first === undefined || last === undefined) return;
  const half = layout.laneHeight / 2;
  pen.fillStyle = mark.what === 'chord' ? colors.ink : colors.edge;
  if (mark.what === 'chord') pen.fillRect(x - 0.75, first + half, 1.5, last - first);
  pen.globalAlpha = 0.35;
  pen.fillRect(x - 0.5, last + half, 1, layout.whyTop - last - half);
  pen.globalAlpha = 1;
}

/** Each kind of decision has a shape of its own, so that colour says nothing alone. */
function sign(pen: Pen, { colors }: Picture, { what }: Mark, x: number, y: number): void {
  pen.beginPath();
  pen.lineWidth = 1.5;
  pen.strokeStyle = colors.ink;
  pen.fillStyle = colors.ink;
  if (what === 'chord') {
    pen.moveTo(x, y - 5);
    pen.lineTo(x + 5, y);
    pen.lineTo(x, y + 5);
    pen.lineTo(x - 5, y);
    pen.fill();
  } else if (what === 'hold') {
    pen.rect(x - 4, y - 4, 8, 8);
    pen.fill();
  } else if (what === 'tap') {
    pen.arc(x, y, 3.5, 0, 7);
    pen.stroke();
  } else if (what === 'no-chord' || what === 'no-binding' || what === 'no-route') {
    pen.strokeStyle = colors.broken;
    pen.moveTo(x - 4, y - 4);
    pen.lineTo(x + 4, y + 4);
    pen.moveTo(x + 4, y - 4);
    pen.lineTo(x - 4, y + 4);
    pen.stroke();
  } else {
    pen.rect(x - 1, y - 5, 2, 10);
    pen.fill();
  }
}

/** What came out, as close together as it can be read; what does not fit is a stroke. */
function notes(
  pen: Pen,
  { view, colors, width }: Picture,
  list: readonly Note[],
  top: number,
  stretched: readonly Stretch[],
): void {
  if (stretched.length > 0) {
    pen.fillStyle = colors['broken-tint'];
    for (const { fromMs, toMs } of stretched) {
      const from = pxOf(view, fromMs);
      pen.fillRect(from, top + 1, Math.max(3, pxOf(view, toMs) - from), ROW - 2);
    }
  }
  pen.textBaseline = 'middle';
  let free = Number.NEGATIVE_INFINITY;
  let stroke = Number.NEGATIVE_INFINITY;
  let font = '';
  for (const { t, text, kind } of list) {
    const x = pxOf(view, t);
    if (x < free || x > width) {
      if (x - stroke < 1) continue;
      stroke = x;
      pen.fillStyle = colors.edge;
      pen.fillRect(x, top + ROW - 7, 1, 4);
      continue;
    }
    const wanted = `${kind === 'char' ? OUT : SMALL}px ${colors.font}`;
    if (font !== wanted) pen.font = wanted;
    font = wanted;
    const word = SEEN[text] ?? text;
    pen.fillStyle = kind === 'char' ? colors.ink : colors.note;
    pen.fillText(word, x, top + ROW / 2 + 1);
    free = x + (word.length === 1 ? 9 : widthOf(pen, word) + 4);
  }
}

const SEEN: Readonly<Record<string, string>> = { ' ': '␣', '\n': '⏎', '\t': '⇥' };

function cursor(pen: Pen, { cursorMs, view, layout, colors }: Picture): void {
  if (cursorMs === null) return;
  const x = Math.round(pxOf(view, cursorMs));
  pen.fillStyle = colors.accent;
  pen.fillRect(x - 0.5, 0, 1.5, layout.height);
  const top = layout.scrollTop;
  pen.beginPath();
  pen.moveTo(x - 5, top);
  pen.lineTo(x + 5.5, top);
  pen.lineTo(x + 0.25, top + 7);
  pen.fill();
}

/** The keys' names at the left, over a ground of their own. */
function labels(pen: Pen, picture: Picture): void {
  const { lanes, layout, colors } = picture;
  pen.textBaseline = 'middle';
  for (const [at, { label, hand, startsHand }] of lanes.entries()) {
    const top = layout.tops[at] ?? 0;
    if (startsHand) {
      pen.font = `${SMALL}px ${colors.font}`;
      pen.fillStyle = colors.muted;
      pen.fillText(hand === 'left' ? 'Left hand' : 'Right hand', 12, top - 9);
    }
    pen.font = `${Math.min(13, Math.max(10, layout.laneHeight - 2))}px ${colors.font}`;
    pen.fillStyle = colors.ink;
    pen.textAlign = 'right';
    pen.fillText(cut(pen, label, LABELS - 20), LABELS - 10, top + layout.laneHeight / 2 + 0.5);
    pen.textAlign = 'left';
  }
  ground(pen, picture, LABELS);
  pen.font = `${SMALL}px ${colors.font}`;
  pen.fillStyle = colors.muted;
  pen.fillText('Why', 12, layout.whyTop + ROW / 2);
  pen.fillText('Comes out', 12, layout.outTop + ROW / 2);
  if (layout.otherTop !== null) pen.fillText('Beside it', 12, layout.otherTop + ROW / 2);
}

const widths = new Map<string, number>();
/** Beyond so many texts the widths are forgotten: a picture has far fewer. */
const MOST_WIDTHS = 2000;

/** The width of a text in the pen's font, px; measuring is the dearest thing in drawing, so it is remembered. */
function widthOf(pen: Pen, text: string): number {
  const name = `${pen.font} ${text}`;
  const known = widths.get(name);
  if (known !== undefined) return known;
  const { width } = pen.measureText(text);
  if (widths.size > MOST_WIDTHS) widths.clear();
  widths.set(name, width);
  return width;
}

/** A text cut to so many pixels: as many letters as its mean width lets in. */
function cut(pen: Pen, text: string, room: number): string {
  const width = widthOf(pen, text);
  if (width <= room) return text;
  const length = Math.floor((text.length * room) / width) - 2;
  return length <= 0 ? '' : `${text.slice(0, length)}…`;
}
