import styles from './board.module.css';

/** How a key is lit: the numbers of the steps that press it, held ones underlined; "" where there is no order. */
export type KeyLight = string;

/** A held step's number carries this sign in a `KeyLight`. */
export const HELD = '_';

/** The step numbers of a lit key at its upper left corner, upright on a turned key; a line under a held one. */
export function OrderBadge({
  light,
  x,
  y,
  turn,
}: {
  readonly light: KeyLight;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}) {
  if (light === '') return null;
  const steps = light.split(' ');
  return (
    <g transform={`translate(${x + 1} ${y + 1}) rotate(${turn})`} className={styles.badge}>
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
}
