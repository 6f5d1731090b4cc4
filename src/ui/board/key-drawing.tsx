import { memo } from 'react';
import styles from './board.module.css';
import { LINE, textWidth } from './fit-text.ts';
import type { Glyph, KeyScene, Rung } from './key-scene.ts';

/** Layers beyond the seventh take the colours from the first again; their number and rung tell them apart. */
const COLOURS = 7;

interface KeyDrawingProps {
  readonly scene: KeyScene;
  readonly selected: boolean;
  readonly lit: boolean;
  /** The card of this key is open. */
  readonly open: boolean;
  /** The binding of this key is being carried. */
  readonly lifted: boolean;
}

/** A cap with all that is on it: the glyph in front, its hold, the ladder, the mark of a home key. */
export const KeyDrawing = memo(function KeyDrawing(props: KeyDrawingProps) {
  const { scene, selected, lit, open, lifted } = props;
  const { width, height } = scene;
  return (
    <g
      className={styles.drawing}
      transform={`translate(${scene.x} ${scene.y}) rotate(${scene.rotation})`}
      data-drawing={scene.id}
      data-selected={selected}
      data-lit={lit}
      data-open={open}
      data-lifted={lifted}
    >
      <rect className={styles.cap} x={-width / 2} y={-height / 2} width={width} height={height} rx={2.6} />
      {scene.home && (
        <rect className={styles.home} x={-2.6} y={height / 2 - 1.15} width={5.2} height={0.7} rx={0.35} />
      )}
      <g data-standing={scene.standing} className={styles.front}>
        {scene.tap === null ? <Silence scene={scene} /> : <GlyphText glyph={scene.tap} />}
        {scene.holdLine !== null && <rect className={styles.holdLine} {...scene.holdLine} height={0.35} />}
        {scene.hold !== null && <GlyphText glyph={scene.hold} />}
      </g>
      {scene.notes > 0 && <NoteMark scene={scene} />}
      {scene.rungs.map((rung) => (
        <RungDrawing key={rung.layer} rung={rung} />
      ))}
    </g>
  );
});

/** A folded corner where the diary has something open about a key; its name says what. */
function NoteMark({ scene: { width, height } }: { readonly scene: KeyScene }) {
  const [x, y] = [width / 2, -height / 2];
  return <path className={styles.note} d={`M${x - 4.4} ${y}H${x - 2}Q${x} ${y} ${x} ${y + 2}V${y + 4.4}Z`} />;
}

/** A tick for what falls through to nothing, a dot for what is blank on purpose. */
function Silence({ scene }: { readonly scene: KeyScene }) {
  const middle = scene.rungs.length > 0 ? -2.8 : 0;
  if (scene.standing === 'blank') return <circle className={styles.dot} cx={middle} cy={0} r={0.75} />;
  if (scene.hold !== null) return null;
  return <rect className={styles.tick} x={middle - 1.4} y={-0.15} width={2.8} height={0.3} />;
}

function GlyphText({ glyph }: { readonly glyph: Glyph }) {
  const { lines, size, x, y, leadsTo } = glyph;
  const rise = ((lines.length - 1) / 2) * size * LINE;
  return (
    <>
      {leadsTo !== null && <LeadsTo glyph={glyph} layer={leadsTo} />}
      {lines.map((line, index) => (
        <text key={line} className={styles.glyph} x={x} y={y - rise + index * size * LINE} fontSize={size}>
          {line}
        </text>
      ))}
    </>
  );
}

/** A key that leads to a layer carries that layer's colour. */
function LeadsTo({ glyph, layer }: { readonly glyph: Glyph; readonly layer: number }) {
  const { lines, size, x, y } = glyph;
  const width = Math.max(...lines.map(textWidth)) * size + 0.6;
  const height = lines.length * size * LINE + 0.3;
  return (
    <rect
      data-layer={layer % COLOURS}
      className={styles.leadsTo}
      x={x - width / 2}
      y={y - height / 2}
      width={width}
      height={height}
      rx={0.8}
    />
  );
}

function RungDrawing({ rung }: { readonly rung: Rung }) {
  const { x, y, width, height, glyph } = rung;
  const middle = { x: x + width / 2 + 0.35, y: y + height / 2 };
  const layer = rung.layer % COLOURS;
  if (rung.front) {
    return (
      <rect
        data-layer={layer}
        className={styles.rungInFront}
        x={x}
        y={y}
        width={0.9}
        height={height}
        rx={0.3}
      />
    );
  }
  if (rung.standing === 'falls') {
    return (
      <rect
        data-layer={layer}
        className={styles.rungTick}
        x={middle.x - 0.9}
        y={middle.y - 0.15}
        width={1.8}
        height={0.3}
      />
    );
  }
  return (
    <g data-layer={layer}>
      <rect className={styles.rung} x={x} y={y} width={width} height={height} rx={0.5} />
      <rect className={styles.rungEdge} x={x} y={y} width={0.7} height={height} rx={0.3} />
      {rung.standing === 'blank' && <circle className={styles.dot} cx={middle.x} cy={middle.y} r={0.45} />}
      {glyph?.lines.map((line, index) => (
        <text
          key={line}
          className={styles.rungGlyph}
          x={glyph.x}
          y={glyph.y + (index - (glyph.lines.length - 1) / 2) * glyph.size * LINE}
          fontSize={glyph.size}
        >
          {line}
        </text>
      ))}
      {rung.withHold && (
        <rect
          className={styles.holdLine}
          x={x + 1.1}
          y={y + height - 0.3}
          width={width - 1.6}
          height={0.18}
        />
      )}
    </g>
  );
}
