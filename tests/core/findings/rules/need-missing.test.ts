import { describe, expect, it } from 'vitest';
import { needMissing } from '../../../../src/core/findings/rules/need-missing.ts';
import type { Action } from '../../../../src/core/keymap/types.ts';
import { type Sketch, says } from '../design.ts';

const base = 'a b c d e ShiftLeft @up Enter Tab Space';
const up = '1 2 3 · · · · · · ·';
const missing = (sketch: Sketch) =>
  says(needMissing, sketch).map(({ messageId, data }) => [messageId, data.need]);

describe('need-missing', () => {
  it.each<[string, Sketch, readonly (readonly [string, string])[]]>([
    ['a character is nowhere', { layers: { base, up }, needs: ['z'] }, [['no-route', 'z']]],
    ['a key is nowhere', { layers: { base, up }, needs: ['key:F5'] }, [['no-route', 'key:F5']]],
    [
      'a shortcut has no modifier',
      { layers: { base, up }, needs: ['shortcut:Control+KeyC'] },
      [['no-route', 'shortcut:Control+KeyC']],
    ],
    [
      'its layer cannot be entered',
      { layers: { base: 'a b c d e f g h i j', up }, needs: ['1', 'a'] },
      [['no-route', '1']],
    ],
    ['the host layout cannot type it', { layers: { base, up }, needs: ['≥'] }, [['host-cannot-type', '≥']]],
  ])('says so when %s', (_, sketch, expected) => {
    expect(missing(sketch)).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['it lies on the base layer', { layers: { base, up }, needs: ['a', 'key:Enter', ' '] }],
    ['Shift makes it', { layers: { base, up }, needs: ['A', '!'] }],
    ['it lies on a layer that is held', { layers: { base, up }, needs: ['1'] }],
    ['it is let off', { layers: { base, up }, needs: ['z'], waived: ['z'] }],
    ['nothing is asked for', { layers: { base, up } }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(missing(sketch)).toEqual([]);
  });

  it('offers an empty place that one can press while the layer is held: a key, a character or a shortcut', () => {
    const needs = ['z', '~', 'shortcut:Control+KeyC', '≥'];
    const edits = says(needMissing, { layers: { base, up }, needs }).map(({ mends }) => mends[0]?.edits[0]);
    const bound = (key: string, action: Action) => ({
      edit: 'bind',
      place: { layer: 'up', key },
      side: 'tap',
      action,
    });
    expect(edits).toEqual([
      bound('L4', { do: 'key', code: 'KeyZ' }),
      bound('LT', { do: 'char', char: '~' }),
      bound('R1', { do: 'key', code: 'KeyC', with: ['ControlLeft'] }),
      undefined,
    ]);
  });

  it('offers each need a place of its own, and from the first again where there are more needs than places', () => {
    const sketch = {
      layers: { base: 'a b c d e ShiftLeft @up Enter · ·' },
      needs: ['x', 'key:AltLeft', 'y', 'z'],
    };
    const places = says(needMissing, sketch).map(({ mends }) => {
      const [edit] = mends[0]?.edits ?? [];
      return edit?.edit === 'bind' ? edit.place.key : undefined;
    });
    expect(places).toEqual(['RT', 'LT', 'RT', 'RT']);
  });

  it('prefers an empty key of the base layer', () => {
    const sketch = { layers: { base: base.replace('Enter', '·'), up }, needs: ['z'] };
    expect(says(needMissing, sketch)[0]?.mends[0]?.edits[0]).toMatchObject({
      place: { layer: 'base', key: 'R1' },
    });
  });
});
