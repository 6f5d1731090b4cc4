import { useCallback } from 'react';
import { useBench } from '../../store/bench.ts';
import type { Notice } from '../../store/bench-state.ts';
import { Toast } from '../widgets/toast.tsx';
import styles from './notices.module.css';

/** The bench's notices, read out as they come. */
export function Notices() {
  const notices = useBench((bench) => bench.notices);
  return (
    <div className={styles.notices} role="status" aria-label="Notices">
      {notices.map((notice) => (
        <NoticeToast key={notice.id} notice={notice} />
      ))}
    </div>
  );
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
