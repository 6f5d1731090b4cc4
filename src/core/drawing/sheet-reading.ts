import { chordsOf, timingOf } from '../keymap/timing.ts';
import { dotMark, tickMark } from './key-shapes.ts';
import { wrapped } from './set-text.ts';
import { ASIDE_LOOK, hangingBlocks, headBlock, linesAt, type Setting } from './sheet-blocks.ts';
import type { Block } from './sheet-flow.ts';
import { type BoxMark, centred, LEAST_PT, linesMm, type Mark } from './sheet-marks.ts';
import { SHIFT_SIGN, type SheetSource } from './sheet-source.ts';
import type { SheetType } from './sheet-type.ts';
import { timingText } from './timing-text.ts';

const INDENT_MM = 8;

/** A sign as it stands on the board, drawn about its middle. */
type Sign = (x: number, y: number, type: SheetType) => readonly Mark[];

const held: Sign = (x, y, type) => [
  tickMark(x, y - 1.5, 4.6, 'muted'),
  ...centred(type, ['held'], x, y + 0.2, { face: 'sans', sizePt: LEAST_PT, ink: 'ink' }),
];

const heldOnRung: Sign = (x, y, type) => [
  ...centred(type, ['held'], x, y - 0.3, { face: 'sans', sizePt: LEAST_PT, ink: 'ink' }),
  tickMark(x, y + 0.95, 4.2, 'muted'),
];

function ladderSign(rungs: readonly number[]): Sign {
  const shown = rungs.slice(0, 3);
  return (x, y) =>
    shown.map((number, at): BoxMark => {
      const middle = y + ((shown.length - 1) / 2 - at) * 1.15;
      return {
        mark: 'box',
        x,
        y: middle,
        width: 0.7,
        height: 0.95,
        rotation: 0,
        radius: 0,
        fill: `layer-${number}`,
      };
    });
}

const numbered: Sign = (x, y, type) => [
  { mark: 'box', x, y, width: 3.1, height: 3.1, rotation: 0, radius: 1.55, stroke: 'chord', strokeMm: 0.25 },
  ...centred(type, ['1'], x, y, { face: 'sans', sizePt: LEAST_PT, ink: 'ink' }),
];

const shifted: Sign = (x, y, type) =>
  centred(type, [SHIFT_SIGN], x, y, { face: 'sans', sizePt: 8, ink: 'ink' });

/** How the drawing is read, as far as the design has such signs, and the times that hold where nothing else is said. */
export function readingBlocks(source: SheetSource, setting: Setting): readonly Block[] {
  const has = signsIn(source);
  const rows: readonly (readonly [wanted: boolean, sign: Sign, text: string])[] = [
    [has.hold, held, 'under the line: what holding the key does'],
    [has.shift, shifted, 'under Shift, where that gives something of its own'],
    [has.rungs, ladderSign(source.rungs), 'the ladder: each layer at its own height, the lowest at the foot'],
    [has.heldRung, heldOnRung, 'underlined on a rung: what holding does there'],
    [has.rungs, (x, y) => [tickMark(x, y, 1.6, 'muted')], 'falls through to the layer below'],
    [has.blank, (x, y) => [dotMark(x, y, 0.8)], 'blank, on purpose'],
    [has.chords, numbered, 'an outline: a chord, explained under its number'],
  ];
  const timing = `Unless a key says otherwise: ${timingText(timingOf(source.keymap))}.`;
  return [
    headBlock('Reading a key', setting),
    ...rows.flatMap(([wanted, sign, text]) => (wanted ? [signBlock(sign, text, setting)] : [])),
    ...(has.hold || has.heldRung
      ? hangingBlocks('', timing, 0, setting, { sign: ASIDE_LOOK, text: ASIDE_LOOK })
      : []),
  ];
}

function signBlock(sign: Sign, text: string, { type, width }: Setting): Block {
  const lines = wrapped(type, ASIDE_LOOK.face, ASIDE_LOOK.sizePt, text, width - INDENT_MM);
  const line = linesMm(1, ASIDE_LOOK.sizePt);
  return {
    height: line * lines.length + 1,
    draw: (x, y) => [
      ...sign(x + 2.6, y + line / 2 + 0.1, type),
      ...linesAt(lines, x + INDENT_MM, y, ASIDE_LOOK),
    ],
  };
}

function signsIn({ keymap, rungs }: SheetSource) {
  const [base, ...upper] = keymap.layers;
  const onBase = Object.values(base?.places ?? {});
  const above = upper.flatMap((layer) => Object.values(layer.places));
  return {
    shift: [...onBase, ...above].some(({ onShift }) => onShift !== undefined),
    hold: onBase.some(({ hold }) => hold !== undefined),
    heldRung: above.some(({ hold }) => hold !== undefined),
    rungs: rungs.length > 0,
    blank: [...onBase, ...above].some(({ tap }) => tap?.do === 'nothing'),
    chords: chordsOf(keymap).length > 0,
  };
}
