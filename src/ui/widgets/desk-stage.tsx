import type { ComponentProps } from 'react';
import styles from './desk-stage.module.css';

/**
 * What stands over the board on a desk that walks somebody through something: what is asked for, `centred`, or words and
 * buttons while nothing is. Its `h2`, where it has one, is its title.
 */
export function DeskStage({
  label,
  centred = false,
  ...rest
}: ComponentProps<'section'> & { readonly label: string; readonly centred?: boolean }) {
  return <section className={styles.stage} aria-label={label} data-centred={centred} {...rest} />;
}
