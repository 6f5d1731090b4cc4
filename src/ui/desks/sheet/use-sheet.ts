import { useDeferredValue, useMemo } from 'react';
import { sheetSvgs } from '../../../core/drawing/sheet.ts';
import type { PaperSize, SheetOptions } from '../../../core/drawing/sheet-paper.ts';
import { paperSize } from '../../../core/drawing/sheet-paper.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { useSettings } from '../../../store/settings/use-settings.ts';
import { useSheetType } from '../../../store/sheet-type.ts';

/** One page of the sheet, as SVG and as an address that pictures can show. */
export interface SheetPicture {
  readonly svg: string;
  readonly address: string;
}

/** The sheet of the open design as far as it is there. */
export type SheetState =
  | { readonly state: 'loading' }
  | { readonly state: 'missing'; readonly why: string }
  | {
      readonly state: 'ready';
      readonly pages: readonly SheetPicture[];
      readonly options: SheetOptions;
      readonly size: PaperSize;
    };

/** Draws the sheet of the open design as it is settled; while it is being drawn anew the one before stands. */
export function useSheet(): SheetState {
  const keymap = useDeferredValue(useBench((bench) => bench.keymap));
  const { host } = useHost(keymap);
  const known = useSheetType();
  const { paper, turn, ink, legends, hiddenRungs } = useSettings();
  const type = known.state === 'ready' ? known.type : null;
  const pages = useMemo(() => {
    if (type === null) return [];
    const layers = keymap.layers.filter((_, number) => !hiddenRungs.includes(number)).map(({ id }) => id);
    const svgs = sheetSvgs({ keymap, host, type, paper, turn, ink, layers, byCode: legends === 'codes' });
    return svgs.map((svg) => ({ svg, address: `data:image/svg+xml,${encodeURIComponent(svg)}` }));
  }, [keymap, host, type, paper, turn, ink, legends, hiddenRungs]);
  if (known.state !== 'ready') return known;
  const options = { paper, turn, ink };
  return { state: 'ready', pages, options, size: paperSize(options) };
}
