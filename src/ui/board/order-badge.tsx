import { memo } from 'react';
import { plus, turned } from '../../core/board/point.ts';
import styles from './board.module.css';
import type { KeyScene } from './key-scene.ts';

/** How a key is lit: the numbers of the steps that press it, held ones underlined; "" where there is no order. */
export type KeyLight = string;

/** A held step's number carries this sign in a `KeyLight`. */
export const HELD = '_';

/** The step numbers of a lit key at its upper left corner, upright on a turned key; a line under a held one. */
export const OrderBadge = memo(function OrderBadge({
  light,
  of,
}: {
  readonly light: KeyLight;
  readonly of: KeyScene;
}) {
  if (light === '') return null;
  const corner = plus(of, turned({ x: 1 - of.width / 2, y: 1 - of.height / 2 }, of.rotation));
  const steps = light.split(' ');
  return (
    <g transform={`translate(${corner.x} ${corner.y})`} className={styles.badge}>
      <rect
        className={styles.badgeArea}
        x={-2.2}
        y={-2.2}
        width={1.6 + steps.length * 2.8}
        height={4.4}
        rx={2.2}
      />
      {steps.map((step, index) => (
        <g key={step} transform={`translate(${index * 2.8} 0)`}>
          <text className={styles.badgeText} fontSize={3}>
            {step.replace(HELD, '')}
          </text>
          {step.endsWith(HELD) && (
            <rect className={styles.badgeHeld} x={-1} y={1.25} width={2} height={0.35} />
          )}
        </g>
      ))}
    </g>
  );
});
