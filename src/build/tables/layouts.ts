/** The layouts of which tables are written: XKB layout and variant, and the languages people write on them (CLDR). */
export interface LayoutEntry {
  readonly layout: string;
  readonly variant: string;
  readonly languages: readonly string[];
}

const LIST = `
us                | en
us intl           | en fr de es pt nl
us altgr-intl     | en fr de es pt nl
us mac            | en fr de es
us dvorak         | en
gb                | en
gb mac            | en
de                | de
de nodeadkeys     | de
de mac            | de
at                | de
ch                | de fr it
ch fr             | fr de it
fr                | fr
fr mac            | fr
be                | nl fr de
es                | es ca
latam             | es
pt                | pt
br                | pt
it                | it
nl                | nl
se                | sv
no                | nb
dk                | da
fi                | fi sv
pl                | pl
cz qwerty         | cs
sk                | sk
hu                | hu
ro                | ro
hr                | hr
tr                | tr
is                | is
ie                | ga en
ca                | fr en
`;

/** In the order in which a list of layouts shows them. */
export const LAYOUTS: readonly LayoutEntry[] = LIST.trim()
  .split('\n')
  .map((line) => {
    const [names = '', languages = ''] = line.split('|');
    const [layout = '', variant = ''] = names.trim().split(' ');
    return { layout, variant, languages: languages.trim().split(' ') };
  });
