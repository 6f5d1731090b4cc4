import { act, cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { useAnalysis } from '../../../../src/store/analysis.ts';
import { AnalysisAfterEdit, useAnalysisIsNow } from '../../../../src/store/analysis-after-edit.tsx';
import { useBench } from '../../../../src/store/bench.ts';
import { Board } from '../../../../src/ui/board/board.tsx';
import { FindingsPanel } from '../../../../src/ui/desks/design/findings/findings-panel.tsx';
import { openBench } from '../../board/open-bench.ts';
import { char, design, layer, TAB_CHORD } from '../../board/sample.ts';

const { drawn } = vi.hoisted(() => ({ drawn: { drawings: [''], keys: [''], findings: [''] } }));

/** The component with its memo, and its drawings written down. */
function noted<Props>(
  component: { readonly type: (props: Props) => unknown },
  into: string[],
  nameOf: (props: Props) => string,
) {
  return {
    ...component,
    type: (props: Props) => {
      into.push(nameOf(props));
      return component.type(props);
    },
  };
}

vi.mock('../../../../src/ui/board/key-drawing.tsx', async (original) => {
  const { KeyDrawing } = await original<typeof import('../../../../src/ui/board/key-drawing.tsx')>();
  return { KeyDrawing: noted(KeyDrawing, drawn.drawings, ({ scene }) => scene.id) };
});
vi.mock('../../../../src/ui/board/board-key.tsx', async (original) => {
  const { BoardKey } = await original<typeof import('../../../../src/ui/board/board-key.tsx')>();
  return { BoardKey: noted(BoardKey, drawn.keys, ({ scene }) => scene.id) };
});
vi.mock('../../../../src/ui/desks/design/findings/finding-card.tsx', async (original) => {
  const { FindingCard } =
    await original<typeof import('../../../../src/ui/desks/design/findings/finding-card.tsx')>();
  return { FindingCard: noted(FindingCard, drawn.findings, ({ finding }) => JSON.stringify(finding)) };
});

const bench = () => useBench.getState();
const bind = (key: string, sign: string) =>
  bench().edit({
    edit: 'bind',
    place: { layer: 'base', key },
    side: 'tap',
    action: { do: 'char', char: sign },
  });
const forget = () => {
  for (const list of Object.values(drawn)) list.length = 0;
};

const seen: { readonly about: unknown; readonly isNow: boolean }[] = [];
function Watch() {
  const { facts } = useAnalysis();
  const isNow = useAnalysisIsNow();
  seen.push({ about: facts.keymap, isNow });
  return <p>{isNow ? 'now' : 'before'}</p>;
}

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

beforeEach(() => {
  openBench({
    ...design(
      [layer('base', 'Base', { R22: char('j'), L22: char('f') }), layer('attic', 'Attic', {})],
      [TAB_CHORD],
    ),
    needs: { lists: [], own: ['x', 'y', 'z'], waived: [] },
  });
});

describe('what an edit draws anew', () => {
  test('of the board only the key that it is about', () => {
    render(<Board />);
    expect(drawn.drawings.length).toBeGreaterThan(4);
    forget();
    act(() => bind('R22', 'ç'));
    expect(new Set(drawn.drawings)).toEqual(new Set(['R22']));
    expect(new Set(drawn.keys)).toEqual(new Set(['R22']));
  });

  test('nothing of the board, where only a note was written', () => {
    render(<Board />);
    forget();
    act(() => bench().edit({ edit: 'set-notes', notes: 'Try the attic on the other thumb.' }));
    expect(drawn.drawings).toEqual([]);
    expect(drawn.keys).toEqual([]);
  });

  test('no finding that still says the same', () => {
    render(<FindingsPanel />);
    const before = [...new Set(drawn.findings)];
    forget();
    act(() => bind('R22', 'x'));
    expect(before.length).toBeGreaterThan(3);
    expect(drawn.findings.filter((finding) => before.includes(finding))).toEqual([]);
  });
});

describe('the analysis after an edit', () => {
  /** Frames come when a test says so. */
  function framesAsTold() {
    const due: FrameRequestCallback[] = [];
    vi.spyOn(window, 'requestAnimationFrame').mockImplementation((run) => due.push(run));
    const paint = () => {
      for (const run of due.splice(0)) run(0);
    };
    return { paint: () => act(paint) };
  }

  function editWatched() {
    render(
      <AnalysisAfterEdit>
        <Watch />
      </AnalysisAfterEdit>,
    );
    const { keymap } = bench();
    seen.length = 0;
    act(() => bind('R22', 'x'));
    return keymap;
  }

  test('comes once the edit has been painted, and until then says that it is the one of before', async () => {
    const frames = framesAsTold();
    const before = editWatched();
    expect(seen).toEqual([{ about: before, isNow: false }]);
    frames.paint();
    expect(seen).toHaveLength(1);
    expect(await screen.findByText('now')).toBeInTheDocument();
    expect(seen.slice(1)).toEqual([{ about: bench().keymap, isNow: true }]);
  });

  test('comes where nothing is painted, too', async () => {
    framesAsTold();
    editWatched();
    expect(await screen.findByText('now', {}, { timeout: 5000 })).toBeInTheDocument();
  });

  test('without a place that keeps it back it is there at once', () => {
    render(<Watch />);
    seen.length = 0;
    act(() => bind('R22', 'x'));
    expect(seen.every(({ about, isNow }) => about === bench().keymap && isNow)).toBe(true);
  });
});
