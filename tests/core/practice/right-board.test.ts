import { describe, expect, test } from 'vitest';
import { DEMOS } from '../../../src/build/demos/demos.ts';
import { play } from '../../../src/core/engine/play.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { needText } from '../../../src/core/keymap/need.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { needsOfKeymap } from '../../../src/core/needs/needs-of.ts';
import { type Asked, BoardTrial, EngineTrial, type Trial } from '../../../src/core/practice/trial.ts';
import { Ways } from '../../../src/core/practice/ways.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import type { Route } from '../../../src/core/routes/types.ts';
import { sample } from './sample.ts';

/** ms between one need and the next. */
const APART = 2000;

function routesOf(keymap: Keymap): readonly Route[] {
  return findRoutes(keymap, usHost, needsOfKeymap(keymap)).flatMap(({ route }) =>
    route === null ? [] : [route],
  );
}

/** Types every need of a design as its route says; hands back the needs that were not simply given. */
function notGiven(
  keymap: Keymap,
  trialOf: (ways: Ways) => Trial,
  type: (trial: Trial, route: Route, from: number) => void,
): readonly string[] {
  const routes = routesOf(keymap);
  expect(routes.length).toBeGreaterThan(0);
  const ways = new Ways(
    keymap,
    usHost,
    routes.map((route) => ({ need: route.need, route })),
  );
  const trial = trialOf(ways);
  return routes.flatMap((route, at) => {
    const text = needText(route.need);
    const way = ways.of(text);
    if (way === null) return [text];
    const asked: Asked = { need: route.need, way, next: routes[at + 1]?.need, oldKeys: [] };
    type(trial, route, at * APART);
    const told = [trial.take(asked)?.what, trial.take(asked)?.what];
    return told[0] === 'done' && told[1] === undefined ? [] : [`${text}: ${told.join(', ')}`];
  });
}

describe.each([...Object.entries(DEMOS), ['a small one', sample] as const])(
  'on %s every need typed as it should be is right, and no fault is told',
  (_, keymap) => {
    test('through the engine', () => {
      const missed = notGiven(
        keymap,
        (ways) => new EngineTrial(keymap, ways),
        (trial, route, from) => {
          if (!(trial instanceof EngineTrial)) return;
          for (const event of route.events) trial.press({ ...event, t: from + event.t });
          trial.advanceTo(from + APART - 1);
        },
      );
      expect(missed).toEqual([]);
    });

    test('from what a real board sends', () => {
      const missed = notGiven(
        keymap,
        () => new BoardTrial(keymap, usHost),
        (trial, route, from) => {
          const played = play(keymap, route.events, usHost);
          if (!(trial instanceof BoardTrial) || !played.ok) return;
          for (const { t, type, code } of played.value.output)
            trial.receive({ kind: type === 'press' ? 'down' : 'up', code, key: '', timeMs: from + t });
        },
      );
      expect(missed).toEqual([]);
    });
  },
);
