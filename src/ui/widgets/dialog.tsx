import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import { IconButton } from './button.tsx';
import styles from './dialog.module.css';
import { CrossIcon } from './icons.tsx';

export interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** The buttons at the foot. */
  readonly footer?: ReactNode;
  readonly width?: 'narrow' | 'wide' | 'full';
}

/** What can take the focus, as far as dialogs have it. */
const CONTROLS = ':is(input, select, textarea, button):not(:disabled), a[href]';

/**
 * A modal dialog of the platform: Escape, its cross and a click beside it close it, and the focus returns to
 * where it was. It is open for as long as it is rendered, and the focus begins on the first control of its body. It
 * lies in the page itself, so that it shows even where what opened it is folded away.
 */
export function Dialog({ title, onClose, children, footer, width = 'narrow' }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const body = useRef<HTMLDivElement>(null);
  const heading = useId();
  // Before it leaves the page again it is closed, so that the platform gives the focus back.
  useLayoutEffect(() => {
    const element = dialog.current;
    if (element !== null && !element.open) element.showModal();
    body.current?.querySelector<HTMLElement>(CONTROLS)?.focus();
    return () => element?.close();
  }, []);
  return createPortal(
    // biome-ignore lint/a11y/useKeyWithClickEvents: the platform closes a modal dialog on Escape; the click is the mouse's way
    <dialog
      ref={dialog}
      className={styles.dialog}
      data-width={width}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => {
        if (event.target === dialog.current) onClose();
      }}
    >
      <div>
        <header className={styles.header}>
          <h2 id={heading}>{title}</h2>
          <IconButton label="Close" onClick={onClose}>
            <CrossIcon />
          </IconButton>
        </header>
        <div ref={body} className={styles.body}>
          {children}
        </div>
        {footer !== undefined && <footer className={styles.footer}>{footer}</footer>}
      </div>
    </dialog>,
    document.body,
  );
}
