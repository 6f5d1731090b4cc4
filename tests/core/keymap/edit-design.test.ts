import { describe, expect, test } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { edited, refusal } from './edits.ts';
import { A, B, chord, layer, small, toLayer } from './small.ts';

const start = { ...small([layer('base', { k1: { tap: A, hold: B } }), layer('sym')]), notes: 'old' };
const place = { layer: 'base', key: 'k1' };

describe('the design itself', () => {
  test.each<[string, Edit, object]>([
    ['Rename the design to New', { edit: 'rename-design', name: 'New' }, { name: 'New' }],
    ['Change the notes', { edit: 'set-notes', notes: 'two\nlines' }, { notes: 'two\nlines' }],
    [
      'Change the computers',
      { edit: 'set-hosts', hosts: [{ system: 'macos', layout: 'pt', variant: '' }] },
      { hosts: [{ system: 'macos', layout: 'pt', variant: '' }] },
    ],
    [
      'Change the needs',
      { edit: 'set-needs', needs: { lists: ['ascii'], own: ['≥'], waived: [] } },
      { needs: { lists: ['ascii'], own: ['≥'], waived: [] } },
    ],
  ])('%s', (title, edit, change) => {
    expect(edited(start, edit)).toEqual({ title, alongside: [], keymap: { ...start, ...change } });
  });

  test('empty notes are no notes', () => {
    expect(edited(start, { edit: 'set-notes', notes: '' }).keymap).not.toHaveProperty('notes');
  });

  test.each<[string, Edit]>([
    [
      `name: found ${JSON.stringify(`${'n'.repeat(50)}…`)}, expected 1 to 80 characters on one line.`,
      { edit: 'rename-design', name: 'n'.repeat(81) },
    ],
    ['hosts: found an empty list, expected one item at least.', { edit: 'set-hosts', hosts: [] }],
    [
      'needs.own[0]: found "ab", expected one character, key:CODE or shortcut:Modifier+CODE with W3C codes.',
      { edit: 'set-needs', needs: { lists: [], own: ['ab'], waived: [] } },
    ],
  ])('refused: %s', (sentence, edit) => {
    expect(refusal(start, edit)).toBe(sentence);
  });
});

describe('timing', () => {
  test('a field is set on a binding, others stay, null takes one away', () => {
    const set = edited(start, {
      edit: 'set-binding-timing',
      place,
      timing: { holdAfterMs: 180, holdBy: 'tap-inside', sameHandTaps: true },
    });
    const less = edited(set.keymap, {
      edit: 'set-binding-timing',
      place,
      timing: { holdAfterMs: null, quietBeforeMs: 0 },
    });
    expect(less.keymap.layers[0]?.places.k1).toEqual({
      tap: A,
      hold: B,
      holdBy: 'tap-inside',
      sameHandTaps: true,
      quietBeforeMs: 0,
    });
  });

  test('the field of the whole design comes with the first of its fields and goes with the last', () => {
    const set = edited(start, { edit: 'set-timing', timing: { againWithinMs: 120 } });
    expect(set.keymap.timing).toEqual({ againWithinMs: 120 });
    expect(edited(set.keymap, { edit: 'set-timing', timing: { againWithinMs: null } }).keymap).toEqual(start);
  });

  test.each<[string, Edit]>([
    [
      'Nothing is bound at k2 on Base.',
      { edit: 'set-binding-timing', place: { ...place, key: 'k2' }, timing: { holdAfterMs: 100 } },
    ],
    [
      'There is no layer with the id "nav".',
      { edit: 'set-binding-timing', place: { ...place, layer: 'nav' }, timing: {} },
    ],
    [
      'layers[0].places.k1.holdAfterMs: found -1, expected 0 at least.',
      { edit: 'set-binding-timing', place, timing: { holdAfterMs: -1 } },
    ],
    [
      'timing.quietBeforeMs: found NaN, expected a number.',
      { edit: 'set-timing', timing: { quietBeforeMs: Number.NaN } },
    ],
  ])('refused: %s', (sentence, edit) => {
    expect(refusal(start, edit)).toBe(sentence);
  });
});

describe('several as one step', () => {
  test('each builds on the one before; what is told is told of all', () => {
    const outcome = edited(start, {
      edit: 'several',
      title: 'Swap two layers in',
      edits: [
        { edit: 'add-layer', layer: layer('num', { k2: { tap: B } }) },
        { edit: 'bind', place, side: 'hold', action: toLayer('num') },
        { edit: 'move-binding', from: { layer: 'base', key: 'k1' }, to: { layer: 'num', key: 'k2' } },
      ],
    });
    expect(outcome.title).toBe('Swap two layers in');
    expect(outcome.keymap.layers[2]?.places).toEqual({ k2: { tap: A, hold: toLayer('num') } });
    expect(outcome.alongside).toEqual(['Replaced B at k1 on Base.', 'Replaced B at k2 on NUM.']);
  });

  test('if one is refused, all are', () => {
    const edits: Edit[] = [
      { edit: 'rename-design', name: 'Half' },
      { edit: 'delete-layer', layer: 'base' },
    ];
    expect(refusal(start, { edit: 'several', title: 'Both', edits })).toBe(
      'The base layer cannot be deleted.',
    );
  });

  test('a name that cannot be does not break the sentence of a later refusal', () => {
    const edits: Edit[] = [
      { edit: 'rename-layer', layer: 'base', name: 'two\nlines' },
      { edit: 'unbind', place: { layer: 'base', key: 'k2' } },
    ];
    expect(refusal(start, { edit: 'several', title: 'Both', edits })).toBe(
      'Nothing is bound at k2 on two lines.',
    );
  });

  test('nor what is told of a layer that was called so for a while', () => {
    const edits: Edit[] = [
      { edit: 'rename-layer', layer: 'sym', name: 'two\nlines' },
      { edit: 'bind', place, side: 'hold', action: toLayer('sym') },
      { edit: 'set-binding', place, binding: { tap: B } },
      { edit: 'delete-layer', layer: 'sym' },
    ];
    expect(edited(start, { edit: 'several', title: 'All', edits }).alongside).toContain(
      'Replaced A and layer two lines, while held (hold) at k1 on Base.',
    );
  });

  test('rules hold for the whole: a layer may be led to before it is there', () => {
    const edits: Edit[] = [
      { edit: 'bind', place, side: 'hold', action: toLayer('num') },
      { edit: 'add-layer', layer: layer('num') },
    ];
    expect(edited(start, { edit: 'several', title: 'Reach a new layer', edits }).keymap.layers).toHaveLength(
      3,
    );
  });
});

describe('a keymap that was broken in memory', () => {
  const broken = small(
    [layer('base', { gone: { tap: A }, k1: { hold: toLayer('nowhere') } })],
    [chord('c', ['k1', 'lost'])],
  );

  test('can be mended step by step', () => {
    const steps: Edit[] = [
      { edit: 'unbind', place: { layer: 'base', key: 'gone' } },
      { edit: 'delete-chord', chord: 'c' },
    ];
    const after = steps.reduce((keymap, edit) => {
      const outcome = applyEdit(keymap, edit);
      if (!outcome.ok) throw new Error(outcome.problem);
      return outcome.value.keymap;
    }, broken);
    expect(edited(after, { edit: 'unbind', place, side: 'hold' }).keymap).toEqual(small([layer('base')], []));
  });

  test('is not made worse', () => {
    const worse: Edit = {
      edit: 'bind',
      place: { layer: 'base', key: 'k2' },
      side: 'tap',
      action: toLayer('no'),
    };
    expect(refusal(broken, worse)).toMatch(/expected the id of/);
  });
});
