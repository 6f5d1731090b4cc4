/** What a key does on the time line. */
export type LineCommand =
  | { readonly do: 'beside'; readonly way: 1 | -1 }
  | { readonly do: 'step'; readonly ms: number }
  | { readonly do: 'end'; readonly at: 'first' | 'last' }
  | { readonly do: 'page'; readonly way: 1 | -1 }
  | { readonly do: 'zoom'; readonly closer: boolean }
  | { readonly do: 'whole' };

const PLAIN: Readonly<Record<string, LineCommand>> = {
  ArrowRight: { do: 'beside', way: 1 },
  ArrowLeft: { do: 'beside', way: -1 },
  Home: { do: 'end', at: 'first' },
  End: { do: 'end', at: 'last' },
  PageDown: { do: 'page', way: 1 },
  PageUp: { do: 'page', way: -1 },
  '+': { do: 'zoom', closer: true },
  '=': { do: 'zoom', closer: true },
  '-': { do: 'zoom', closer: false },
  '0': { do: 'whole' },
};

const SHIFTED: Readonly<Record<string, LineCommand>> = {
  ArrowRight: { do: 'step', ms: 1 },
  ArrowLeft: { do: 'step', ms: -1 },
  '+': { do: 'zoom', closer: true },
};

/** The command of a key, null where it has none; combinations with Control, Alt and Meta belong to the page. */
export function lineCommand(event: {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}): LineCommand | null {
  if (event.ctrlKey || event.altKey || event.metaKey) return null;
  const table = event.shiftKey ? SHIFTED : PLAIN;
  return Object.hasOwn(table, event.key) ? (table[event.key] ?? null) : null;
}
