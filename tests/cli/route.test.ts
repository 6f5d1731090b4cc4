import { describe, expect, test } from 'vitest';
import { routeCommand } from '../../src/cli/commands/route.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const design = folderOfFiles()('design.json', twoKeyDesign);
const routesOf = (...args: string[]) => JSON.parse(routeCommand([design, '--json', ...args]).output);

describe('route --json', () => {
  test('prints the needs in the order asked, each with its cost, steps and events', () => {
    const { needs } = routesOf('1', 'a');
    expect(needs.map(({ need }: { need: string }) => need)).toEqual(['1', 'a']);
    expect(Object.keys(needs[0])).toEqual(['need', 'reachable', 'clumsy', 'cost', 'steps', 'events']);
    expect(needs[0]).toMatchObject({
      reachable: true,
      clumsy: false,
      cost: { strokes: 1, presses: 2, holds: 1 },
    });
    expect(needs[0].steps).toHaveLength(2);
    expect(needs[0].events[0]).toMatchObject({ key: 'T', type: 'down' });
    expect(needs[1]).toMatchObject({
      cost: { strokes: 1, presses: 1, holds: 0, waitMs: 0 },
      events: [
        { key: 'A', type: 'down' },
        { key: 'A', type: 'up' },
      ],
    });
  });

  test('a need without a route has no cost, no steps and no events, and the exit code says so', () => {
    const { output, exitCode } = routeCommand([design, 'z', 'key:Space', '--json']);
    expect(exitCode).toBe(1);
    expect(JSON.parse(output).needs[0]).toEqual({
      need: 'z',
      reachable: false,
      clumsy: false,
      cost: null,
      steps: [],
      events: [],
    });
  });

  test('--host stands in for the first host of the design', () => {
    expect(routesOf('ł').needs[0].reachable).toBe(false);
    expect(routesOf('ł', '--host', 'pl').needs[0].reachable).toBe(true);
  });
});

describe('route --host', () => {
  const ownHosts = folderOfFiles()('hosts.json', {
    ...twoKeyDesign,
    hosts: [
      {
        system: 'linux',
        layout: 'pl',
        variant: '',
        // Its own ł, and the dead stroke that makes one.
        corrections: [
          { code: 'KeyL', level: 'level3', gives: '' },
          { code: 'KeyK', level: 'shift-level3', gives: '' },
        ],
      },
      { system: 'linux', layout: 'us', variant: '' },
      {
        system: 'macos',
        layout: 'us',
        variant: 'mac',
        corrections: [{ code: 'KeyL', level: 'level3', gives: 'ł' }],
      },
    ],
  });

  test.each([
    ["the document's own host has its corrections", 'us mac', true],
    ['as has the first when it is named', 'pl', false],
    ['corrections of others do not reach a host that has none', 'us', false],
    ['nor one that the document does not name', 'us dvorak', false],
  ])('%s (%s)', (_, host, reachable) => {
    const { output } = routeCommand([ownHosts, 'ł', '--json', '--host', host]);
    expect(JSON.parse(output).needs[0].reachable).toBe(reachable);
  });

  test('without it the first host counts, corrections included', () => {
    expect(JSON.parse(routeCommand([ownHosts, 'ł', '--json']).output).needs[0].reachable).toBe(false);
  });

  test.each([['xx'], ['us nonsense'], ['../us']])('%s is refused with the layouts that there are', (host) => {
    const { output, problem, exitCode } = routeCommand([ownHosts, 'a', '--host', host]);
    expect([output, exitCode]).toEqual(['', 2]);
    expect(problem).toContain(`no table for the host layout "${host}"`);
    expect(problem).toContain('us mac');
  });
});

test('route for people is a table with the steps', () => {
  const { output, exitCode } = routeCommand([design, 'A', 'key:F5']);
  const [heading, capital, functionKey] = output.split('\n');
  expect(heading).toMatch(/^need +strokes +presses +holds +wait ms +how$/);
  expect(capital).toMatch(/^A +clumsy +1 +2 +1 +0 +hold/);
  expect(functionKey).toMatch(/^F5 +MISSING$/);
  expect(exitCode).toBe(1);
});

test.each([
  [['key:Nonsense'], /Not a need: .*key:Nonsense/],
  [[], /wants a design and one or more needs/],
])('%j is refused', (needs, sentence) => {
  const { output, problem, exitCode } = routeCommand([design, ...needs]);
  expect([output, exitCode]).toEqual(['', 2]);
  expect(problem).toMatch(sentence);
});
