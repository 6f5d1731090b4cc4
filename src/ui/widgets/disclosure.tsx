import type { ReactNode } from 'react';
import styles from './disclosure.module.css';

/** A heading that opens what is under it; it remembers by itself whether it is open. */
export function Disclosure({
  title,
  badge,
  startOpen = false,
  children,
}: {
  readonly title: ReactNode;
  readonly badge?: ReactNode;
  readonly startOpen?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className={styles.disclosure} open={startOpen}>
      <summary className={styles.summary}>
        <span className={styles.mark} aria-hidden="true" />
        <span className={styles.title}>{title}</span>
        {badge}
      </summary>
      <div className={styles.content}>{children}</div>
    </details>
  );
}
