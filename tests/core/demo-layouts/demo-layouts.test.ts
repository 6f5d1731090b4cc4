import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DEMOS } from '../../../src/build/demos/demos.ts';
import { findList } from '../../../src/cli/find-list.ts';
import { loadHost } from '../../../src/cli/host-tables.ts';
import { factsOf } from '../../../src/core/findings/facts.ts';
import type { Finding } from '../../../src/core/findings/find.ts';
import { findAll } from '../../../src/core/findings/find-all.ts';
import { RULES } from '../../../src/core/findings/registry.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';

const files = readdirSync('demo-layouts').filter((file) => file.endsWith('.json'));

function opened(file: string): Keymap {
  const read = readKeymap(readFileSync(`demo-layouts/${file}`, 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence);
  return read.value;
}

function findingsOf(keymap: Keymap): readonly Finding[] {
  const [first] = keymap.hosts;
  const host = first === undefined ? undefined : loadHost(first);
  if (host?.ok !== true) throw new Error('no host table');
  return findAll(factsOf(keymap, host.value, undefined, findList));
}

/** A finding as the notes state it: its rule and in brackets what it is about, or the need where it names no part. */
function asStated({ rule, subjects, data }: Finding): string {
  const parts = [...subjects.chords, ...new Set(subjects.layers), ...subjects.keys];
  return `${rule} [${parts.length > 0 ? parts.join(' ') : data.need}]`;
}

function statedIn(notes: string): string[] {
  return [...notes.matchAll(/^- ([a-z-]+ \[.+?\]): /gm)].map((match) => match[1] ?? '');
}

describe('the demonstration designs', () => {
  test('are the files that are written from their drawings', () => {
    expect(files.toSorted()).toEqual(
      Object.keys(DEMOS)
        .map((name) => `${name}.json`)
        .toSorted(),
    );
    for (const [name, keymap] of Object.entries(DEMOS)) {
      // Else: npm run demos
      expect(readFileSync(`demo-layouts/${name}.json`, 'utf8')).toBe(writeKeymap(keymap));
    }
  });

  test.each(files)('%s: its findings are those that its notes state', (file) => {
    const keymap = opened(file);
    expect(findingsOf(keymap).map(asStated).toSorted()).toEqual(statedIn(keymap.notes ?? '').toSorted());
  });

  test('the box of faults shows every rule about designs once, but for references, with which no file is opened', () => {
    const shown = findingsOf(opened('box-of-faults.json')).map(({ rule }) => rule);
    const ofDesigns = RULES.filter(({ id, about }) => id !== 'reference-broken' && about === undefined);
    const all = ofDesigns.map(({ id }) => id);
    expect(shown.toSorted()).toEqual(all.toSorted());
  });

  test('the first one works but for one character, and everything else that it asks for is reached without effort', () => {
    const keymap = opened('beacon-log.json');
    const host = loadHost({ layout: 'us', variant: '' });
    if (!host.ok) throw new Error(host.problem);
    const { needs } = factsOf(keymap, host.value, undefined, findList);
    expect(needs.length).toBeGreaterThan(170);
    expect(needs.filter(({ route }) => route === null).map(({ need }) => need)).toEqual([
      { kind: 'char', char: '`' },
    ]);
    expect(needs.filter(({ route }) => route?.clumsy)).toEqual([]);
  });
});
