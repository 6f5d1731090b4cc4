import type { Board, Host, Keymap, Needs } from './types.ts';

/** What a new design starts from. */
export interface NewKeymap {
  readonly name: string;
  readonly board: Board;
  readonly host: Host;
  readonly needs?: Needs;
}

/** A design with nothing on it but an empty base layer. */
export function newKeymap({ name, board, host, needs }: NewKeymap): Keymap {
  return {
    format: 'neutral-keymap',
    version: 1,
    name,
    board,
    hosts: [host],
    ...(needs ? { needs } : {}),
    layers: [{ id: 'base', name: 'Base', places: {} }],
  };
}
