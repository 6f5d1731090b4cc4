import type { Bar } from '../../../../core/rehearse/scene.ts';
import type { Pen, Picture } from './draw.ts';
import { pxOf } from './view.ts';

/** Windows and thresholds: time in which something is being waited for. */
export function bandsOn(pen: Pen, { scene, layout, view, colors }: Picture): void {
  for (const { kind, lanes, from, to } of scene.bands) {
    const x = pxOf(view, from);
    const width = pxOf(view, to) - x;
    // Too thin to be seen beside its bar.
    if (width < 2) continue;
    for (const lane of lanes) {
      const top = layout.tops[lane] ?? 0;
      if (kind === 'window') {
        pen.fillStyle = colors['note-tint'];
        pen.fillRect(x, top, width, layout.laneHeight);
        pen.fillStyle = colors.note;
        pen.fillRect(x + width - 1, top, 1, layout.laneHeight);
      } else {
        pen.fillStyle = colors.risky;
        pen.fillRect(x, top + layout.laneHeight - 2, width, 1);
        pen.fillRect(x + width - 1, top + layout.laneHeight - 6, 1.5, 5);
      }
    }
    if (width > 46) bandText(pen, kind, to - from, x + width, layout.tops[lanes[0] ?? 0] ?? 0, colors);
  }
}

function bandText(
  pen: Pen,
  kind: 'window' | 'threshold',
  span: number,
  right: number,
  top: number,
  colors: Picture['colors'],
): void {
  pen.font = `10px ${colors.font}`;
  pen.textBaseline = 'top';
  pen.fillStyle = kind === 'window' ? colors.note : colors.risky;
  pen.fillText(`${Math.round(span * 10) / 10}`, right + 3, top + 2);
}

/** Presses: hollow while it is not decided what they are, then filled. */
export function barsOn(pen: Pen, picture: Picture): void {
  const { scene, layout, view, endMs } = picture;
  const inset = Math.max(2, Math.round(layout.laneHeight * 0.2));
  const height = layout.laneHeight - 2 * inset;
  const drawn = new Float64Array(layout.tops.length).fill(Number.NEGATIVE_INFINITY);
  for (const bar of scene.bars) {
    const y = (layout.tops[bar.lane] ?? 0) + inset;
    const left = pxOf(view, bar.from);
    const right = Math.max(left + 2, pxOf(view, bar.to ?? Math.max(endMs, bar.from)));
    // Far off presses fall on one another: what would be drawn over a lane's last bar adds nothing to it.
    if (right <= (drawn[bar.lane] ?? 0) + 0.5) continue;
    drawn[bar.lane] = right;
    if (right - left < PLAIN_UNDER) {
      pen.fillStyle = colorOf(picture.colors, bar.result);
      pen.fillRect(left, y, right - left, height);
      continue;
    }
    const decided = bar.decided === null ? right : Math.min(right, Math.max(left, pxOf(view, bar.decided)));
    hollow(pen, picture, left, decided, y, height);
    filled(pen, picture, bar, decided, right, y, height);
  }
}

/** A bar thinner than this, px, has no room for what tells it apart but its colour. */
const PLAIN_UNDER = 4;

function colorOf(colors: Picture['colors'], result: Bar['result']): string {
  if (result === 'tap') return colors.accent;
  if (result === 'chord') return colors['layer-0'];
  if (result === 'hold') return colors.ink;
  return result === 'nothing' ? colors.broken : colors.edge;
}

function hollow(pen: Pen, { colors }: Picture, from: number, to: number, y: number, height: number): void {
  if (to - from < 1) return;
  pen.fillStyle = colors.surface;
  pen.fillRect(from, y, to - from, height);
  pen.strokeStyle = colors.edge;
  pen.lineWidth = 1;
  pen.strokeRect(from + 0.5, y + 0.5, Math.max(1, to - from - 1), height - 1);
}

function filled(
  pen: Pen,
  { colors }: Picture,
  { result }: Bar,
  from: number,
  to: number,
  y: number,
  height: number,
): void {
  // A press that is decided at its very end still shows what it was.
  const left = Math.min(from, to - 3);
  const width = to - left;
  if (result === 'undecided') return;
  if (result === 'nothing') {
    pen.strokeStyle = colors.broken;
    pen.lineWidth = 1;
    pen.strokeRect(left + 0.5, y + 0.5, Math.max(1, width - 1), height - 1);
    return;
  }
  pen.fillStyle = colorOf(colors, result);
  if (result === 'hold') {
    // A hold is a bar with a second line over it, as on the board it is a line under the sign.
    pen.fillRect(left, y + 3, width, height - 3);
    pen.fillRect(left, y, width, 1.5);
    return;
  }
  pen.fillRect(left, y, width, height);
  if (result !== 'chord') return;
  pen.strokeStyle = colors.ink;
  pen.lineWidth = 1;
  pen.strokeRect(left + 0.5, y + 0.5, Math.max(1, width - 1), height - 1);
}
