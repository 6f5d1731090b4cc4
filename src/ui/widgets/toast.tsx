import { type ReactNode, useEffect, useState } from 'react';
import { Button, IconButton } from './button.tsx';
import { CrossIcon } from './icons.tsx';
import styles from './toast.module.css';

/** How long a toast stands, ms; long enough to read it, find its button and press it. */
const STAYS_MS = 10_000;

/** A sentence that stands for a while, with a button if it offers one. It stays while pointed at or focused. */
export function Toast({
  tone,
  children,
  action,
  onDismiss,
}: {
  readonly tone: 'done' | 'refused' | 'warning';
  readonly children: ReactNode;
  readonly action?: { readonly label: string; readonly onPress: () => void } | undefined;
  readonly onDismiss: () => void;
}) {
  const [kept, setKept] = useState(false);
  useEffect(() => {
    if (kept) return;
    const timer = setTimeout(onDismiss, STAYS_MS);
    return () => clearTimeout(timer);
  }, [kept, onDismiss]);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: pointing at a toast only keeps it from going away
    <div
      className={styles.toast}
      data-tone={tone}
      onPointerEnter={() => setKept(true)}
      onPointerLeave={() => setKept(false)}
      onFocus={() => setKept(true)}
      onBlur={() => setKept(false)}
    >
      <p className={styles.text}>{children}</p>
      {action !== undefined && (
        <Button tone="quiet" className={styles.action} onClick={action.onPress}>
          {action.label}
        </Button>
      )}
      <IconButton label="Dismiss" className={styles.cross} onClick={onDismiss}>
        <CrossIcon />
      </IconButton>
    </div>
  );
}
