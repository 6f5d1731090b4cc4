/** A physical event: a key, by its id on the board, goes down or comes up; t in ms, fractions allowed. */
export interface KeyEvent {
  readonly t: number;
  readonly key: string;
  readonly type: 'down' | 'up';
}
