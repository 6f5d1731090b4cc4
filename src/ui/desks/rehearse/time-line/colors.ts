/** The theme's colours that the canvas draws with. */
export interface Colors {
  readonly paper: string;
  readonly surface: string;
  readonly sunken: string;
  readonly ink: string;
  readonly muted: string;
  readonly hairline: string;
  readonly edge: string;
  readonly accent: string;
  readonly 'accent-tint': string;
  readonly broken: string;
  readonly 'broken-tint': string;
  readonly note: string;
  readonly 'note-tint': string;
  readonly risky: string;
  readonly 'layer-0': string;
  readonly font: string;
}

/** The colours as they are at the moment; the theme may change under the canvas. */
export function colorsNow(): Colors {
  const style = getComputedStyle(document.documentElement);
  const of = (name: string) => style.getPropertyValue(`--${name}`).trim();
  return {
    paper: of('paper'),
    surface: of('surface'),
    sunken: of('sunken'),
    ink: of('ink'),
    muted: of('muted'),
    hairline: of('hairline'),
    edge: of('edge'),
    accent: of('accent'),
    'accent-tint': of('accent-tint'),
    broken: of('broken'),
    'broken-tint': of('broken-tint'),
    note: of('note'),
    'note-tint': of('note-tint'),
    risky: of('risky'),
    'layer-0': of('layer-0'),
    font: of('font'),
  };
}
