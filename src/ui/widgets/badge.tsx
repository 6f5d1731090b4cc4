import type { ReactNode } from 'react';
import styles from './badge.module.css';

/** A small count or word beside a name. The tone is never its only message: the text says it too. */
export function Badge({
  tone = 'plain',
  children,
}: {
  readonly tone?: 'plain' | 'broken' | 'risky' | 'note' | 'accent';
  readonly children: ReactNode;
}) {
  return (
    <span className={styles.badge} data-tone={tone}>
      {children}
    </span>
  );
}
