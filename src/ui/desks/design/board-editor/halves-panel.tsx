import { withMirroredLeft, withOwnLeft } from '../../../../core/board/halves.ts';
import type { Hand, MadeFrom } from '../../../../core/keymap/types.ts';
import { Choice } from '../../../widgets/choice.tsx';
import styles from './panel.module.css';
import { ShapeSlider } from './shape-slider.tsx';
import type { Shaping } from './use-shaping.ts';

const MIRRORED = [
  { value: 'mirrored', label: 'Mirrored' },
  { value: 'own', label: 'Each its own' },
] as const;

const HANDS = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
] as const;

/** How the halves lie to each other, and whether they are shaped alike. */
export function HalvesPanel({
  madeFrom,
  shaping,
  hand,
  onHand,
}: {
  readonly madeFrom: MadeFrom;
  readonly shaping: Shaping;
  readonly hand: Hand;
  readonly onHand: (hand: Hand) => void;
}) {
  const { left } = madeFrom;
  return (
    <div className={styles.fields}>
      <Choice
        label="Shape of the halves"
        value={left === undefined ? 'mirrored' : 'own'}
        options={MIRRORED}
        onChange={(how) =>
          how === 'own'
            ? shaping.commit('Give each half its own shape', withOwnLeft(madeFrom))
            : shaping.commit('Mirror the right half', withMirroredLeft(madeFrom))
        }
      />
      {left !== undefined && (
        <Choice label="The numbers below are of the half" value={hand} options={HANDS} onChange={onHand} />
      )}
      <ShapeSlider
        label="Gap between the halves"
        unit="mm"
        value={madeFrom.gapMm}
        limits={[0, 600]}
        step={1}
        shaping={shaping}
        made={(gapMm) => ({ ...madeFrom, gapMm })}
      />
      {left === undefined ? (
        <ShapeSlider
          label="Turn of the halves"
          unit="°"
          value={madeFrom.turnDeg}
          limits={[-45, 45]}
          step={0.5}
          shaping={shaping}
          made={(turnDeg) => ({ ...madeFrom, turnDeg })}
        />
      ) : (
        <OwnTurns madeFrom={madeFrom} left={left} shaping={shaping} />
      )}
      <p className={styles.quiet}>A turn below 0 brings the tops together, above 0 the thumbs.</p>
    </div>
  );
}

function OwnTurns({
  madeFrom,
  left,
  shaping,
}: {
  readonly madeFrom: MadeFrom;
  readonly left: NonNullable<MadeFrom['left']>;
  readonly shaping: Shaping;
}) {
  return (
    <>
      <ShapeSlider
        label="Turn of the left half"
        unit="°"
        value={left.turnDeg}
        limits={[-45, 45]}
        step={0.5}
        shaping={shaping}
        made={(turnDeg) => ({ ...madeFrom, left: { ...left, turnDeg } })}
      />
      <ShapeSlider
        label="Turn of the right half"
        unit="°"
        value={madeFrom.turnDeg}
        limits={[-45, 45]}
        step={0.5}
        shaping={shaping}
        made={(turnDeg) => ({ ...madeFrom, turnDeg })}
      />
      <ShapeSlider
        label="Left half nearer to you by"
        unit="mm"
        value={left.downMm}
        limits={[-150, 150]}
        step={1}
        shaping={shaping}
        made={(downMm) => ({ ...madeFrom, left: { ...left, downMm } })}
      />
    </>
  );
}
