/** A standard arrangement of letters: three rows of ten characters, from left to right. */
export interface Arrangement {
  readonly id: 'qwerty' | 'qwertz' | 'azerty' | 'dvorak';
  readonly title: string;
  readonly rows: readonly [string, string, string];
}

/**
 * The standard arrangements: QWERTY as on US keyboards, QWERTZ as in DIN 2137-1 (T1), AZERTY as on French keyboards,
 * ANSI Dvorak as in ANSI X4.22-1983. The tests hold them against XKB's us, de, fr and us(dvorak).
 */
export const ARRANGEMENTS: readonly Arrangement[] = [
  { id: 'qwerty', title: 'QWERTY', rows: ['qwertyuiop', 'asdfghjkl;', 'zxcvbnm,./'] },
  { id: 'qwertz', title: 'QWERTZ', rows: ['qwertzuiop', 'asdfghjklö', 'yxcvbnm,.-'] },
  { id: 'azerty', title: 'AZERTY', rows: ['azertyuiop', 'qsdfghjklm', 'wxcvbn,;:!'] },
  { id: 'dvorak', title: 'ANSI Dvorak', rows: ["',.pyfgcrl", 'aoeuidhtns', ';qjkxbmwvz'] },
];
