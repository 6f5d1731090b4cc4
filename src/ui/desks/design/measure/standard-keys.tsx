import styles from './measure.module.css';

/** Rows of letter keys of a standard keyboard, each moved right by so many keys (ISO/IEC 9995-2). */
const ROWS: readonly { readonly shift: number; readonly codes: readonly string[] }[] = [
  { shift: 0, codes: 'KeyQ KeyW KeyE KeyR KeyT KeyY KeyU KeyI KeyO KeyP'.split(' ') },
  { shift: 0.25, codes: 'KeyA KeyS KeyD KeyF KeyG KeyH KeyJ KeyK KeyL Semicolon'.split(' ') },
  { shift: 0.75, codes: 'KeyZ KeyX KeyC KeyV KeyB KeyN KeyM Comma Period Slash'.split(' ') },
];
const PITCH = 32;

/** The letter keys of the keyboard at hand, some of them lit; for the eye alone, the same stands beside it in words. */
export function StandardKeys({
  lit,
  legendOf,
}: {
  readonly lit: readonly string[];
  readonly legendOf: (code: string) => string;
}) {
  return (
    <svg className={styles.keys} viewBox={`0 0 ${PITCH * 10.75} ${PITCH * 3}`} aria-hidden="true">
      {ROWS.flatMap(({ shift, codes }, row) =>
        codes.map((code, at) => (
          <g
            key={code}
            className={styles.key}
            data-lit={lit.includes(code)}
            transform={`translate(${(at + shift) * PITCH + 1} ${row * PITCH + 1})`}
          >
            <rect width={PITCH - 2} height={PITCH - 2} rx="4" />
            <text x={PITCH / 2 - 1} y={PITCH / 2 + 4}>
              {legendOf(code)}
            </text>
          </g>
        )),
      )}
    </svg>
  );
}
