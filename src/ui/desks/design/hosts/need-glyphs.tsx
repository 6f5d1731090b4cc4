import { type Need, needText } from '../../../../core/keymap/need.ts';
import { needLegend } from '../needs/need-rows.ts';
import styles from './hosts.module.css';

/** Needs in a row, by their legends. */
export function NeedGlyphs({ needs }: { readonly needs: readonly Need[] }) {
  return (
    <ul className={styles.glyphs}>
      {needs.map((need) => {
        const { glyph, name } = needLegend(need);
        return (
          <li key={needText(need)} title={name}>
            {glyph}
          </li>
        );
      })}
    </ul>
  );
}
