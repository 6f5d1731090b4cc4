import { expect, test } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { A, B, chord, layer, small, toLayer } from './small.ts';

const keymap = small(
  [layer('base', { k1: { tap: A }, k2: { tap: B, hold: toLayer('nav') } }), layer('nav', { k2: { tap: B } })],
  [chord('pair', ['k1', 'k2']), chord('three', ['k1', 'k2', 'k3'])],
);
const at = (key: string) => ({ layer: 'base', key });
const without = (gone: string) => ({
  ...keymap.board,
  keys: keymap.board.keys.filter(({ id }) => id !== gone),
});

test.each<[string, Edit]>([
  ['k1', { edit: 'bind', place: at('k1'), side: 'tap', action: B }],
  ['k3', { edit: 'unbind', place: at('k3') }],
  ['k1', { edit: 'unbind', place: at('k1'), side: 'hold' }],
  ['k1', { edit: 'unbind', place: at('k1') }],
  ['k1', { edit: 'set-on-shift', place: at('k1'), action: null }],
  ['k1', { edit: 'set-binding', place: at('k1'), binding: { tap: B } }],
  ['k2', { edit: 'move-binding', from: at('k1'), to: at('k2') }],
  ['k3', { edit: 'move-binding', from: at('k3'), to: at('k2') }],
  ['k2', { edit: 'swap-bindings', one: at('k1'), other: at('k2') }],
  ['k1', { edit: 'set-binding-timing', place: at('k1'), timing: { holdAfterMs: 200 } }],
  ['k2', { edit: 'delete-layer', layer: 'nav' }],
  ['k1', { edit: 'delete-key', key: 'k1' }],
  ['k1', { edit: 'set-board', board: without('k1') }],
  [
    'k2',
    {
      edit: 'several',
      title: '',
      edits: [{ edit: 'bind', place: at('k2'), side: 'tap', action: A }],
    },
  ],
])('%s is called by its name, never by its id, in what is said of %j', (key, edit) => {
  const outcome = applyEdit(keymap, edit, (board, id) =>
    board.keys.some((each) => each.id === id) ? `<${id}>` : 'a key of another board',
  );
  const said = outcome.ok ? [outcome.value.title, ...outcome.value.alongside].join(' ') : outcome.problem;
  expect(said).toContain(`<${key}>`);
  expect(said).not.toMatch(/(?<!<)\bk\d/);
  expect(said).not.toContain('another board');
});
