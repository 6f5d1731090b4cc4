import { describe, expect, it } from 'vitest';
import { waiverNotNeeded } from '../../../../src/core/findings/rules/waiver-not-needed.ts';
import { type Sketch, says } from '../design.ts';

const layers = { base: 'a b c d e f g h i j' };
const about = (sketch: Omit<Sketch, 'layers'>) =>
  says(waiverNotNeeded, { layers, ...sketch }).map(({ messageId, data }) => [messageId, data.need]);

describe('waiver-not-needed', () => {
  it.each<[string, Omit<Sketch, 'layers'>, readonly (readonly [string, string])[]]>([
    ['an own need that is let off can be typed', { needs: ['a'], waived: ['a'] }, [['reached', 'a']]],
    ['a need of a list can be typed', { lists: ['ascii'], waived: ['a', 'z'] }, [['reached', 'a']]],
    ['nothing asks for it', { needs: ['a'], waived: ['key:F5', 'key:F5'] }, [['not-asked-for', 'key:F5']]],
    [
      'its modifiers are in another order',
      { waived: ['shortcut:Alt+Control+Delete'] },
      [['not-asked-for', 'shortcut:Control+Alt+Delete']],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(about(sketch)).toEqual(expected);
  });

  it.each<[string, Omit<Sketch, 'layers'>]>([
    ['it is asked for and cannot be typed', { needs: ['z'], waived: ['z'] }],
    ['a list that is not known may ask for it', { lists: ['no-such-list'], waived: ['z'] }],
    ['nothing is let off', { needs: ['a'] }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(about(sketch)).toEqual([]);
  });

  it('offers to take all waivers of that need away', () => {
    const [found] = says(waiverNotNeeded, { layers, needs: ['a', 'z'], waived: ['a', 'z', 'a'] });
    expect(found?.mends[0]?.edits).toEqual([
      {
        edit: 'set-needs',
        needs: { lists: [], own: ['a', 'z'], waived: [{ need: 'z', why: 'never used' }] },
      },
    ]);
  });
});
