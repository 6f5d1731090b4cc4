import type { ComponentProps } from 'react';
import styles from './button.module.css';

type Tone = 'plain' | 'accent' | 'quiet' | 'danger';

/** A push button. `accent` is for the one thing a view is about, `quiet` for buttons in rows of text. */
export function Button({ tone = 'plain', className, ...rest }: ComponentProps<'button'> & { tone?: Tone }) {
  return (
    <button
      type="button"
      data-tone={tone}
      className={className === undefined ? styles.button : `${styles.button} ${className}`}
      {...rest}
    />
  );
}

/** A square button that shows a picture or sign; its label is read out and shown on hovering. */
export function IconButton({
  label,
  tone = 'quiet',
  className,
  ...rest
}: Omit<ComponentProps<'button'>, 'aria-label' | 'title'> & { label: string; tone?: Tone }) {
  const both = `${styles.button} ${styles.icon}`;
  return (
    <button
      type="button"
      data-tone={tone}
      aria-label={label}
      title={label}
      className={className === undefined ? both : `${both} ${className}`}
      {...rest}
    />
  );
}
