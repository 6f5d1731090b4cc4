import { type FocusEvent, useCallback, useLayoutEffect, useRef } from 'react';
import { useBench } from '../../store/bench.ts';
import type { Notice } from '../../store/bench-state.ts';
import { Toast } from '../widgets/toast.tsx';
import styles from './notices.module.css';

/** The bench's notices, read out as they come. */
export function Notices() {
  const notices = useBench((bench) => bench.notices);
  const cameFrom = useFocusGivenBack();
  return (
    <div className={styles.notices} role="status" aria-label="Notices" onFocus={cameFrom}>
      {notices.map((notice) => (
        <NoticeToast key={notice.id} notice={notice} />
      ))}
    </div>
  );
}

/** A notice that goes while it has the focus gives it back to where it came from. */
function useFocusGivenBack() {
  const before = useRef<HTMLElement | null>(null);
  const inside = useRef<Element | null>(null);
  useLayoutEffect(() => {
    if (inside.current === null || inside.current.isConnected) return;
    inside.current = null;
    const { activeElement } = document;
    if (activeElement === null || activeElement === document.body) before.current?.focus();
  });
  return ({ target, relatedTarget, currentTarget }: FocusEvent) => {
    inside.current = target;
    const isFromOutside = relatedTarget instanceof HTMLElement && !currentTarget.contains(relatedTarget);
    if (isFromOutside) before.current = relatedTarget;
  };
}

function NoticeToast({ notice }: { readonly notice: Notice }) {
  const dismiss = useBench((bench) => bench.dismiss);
  const undo = useBench((bench) => bench.undo);
  const onDismiss = useCallback(() => dismiss(notice.id), [dismiss, notice.id]);
  const takeBack = () => {
    onDismiss();
    undo();
  };
  return (
    <Toast
      tone={notice.tone}
      onDismiss={onDismiss}
      action={notice.canUndo ? { label: 'Undo', onPress: takeBack } : undefined}
    >
      {notice.text}
    </Toast>
  );
}
