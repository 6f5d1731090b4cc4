import { useEffect } from 'react';
import { keyUnder } from '../../../core/board/overlay.ts';
import { useBench } from '../../../store/bench.ts';
import { useChosenOverlay } from '../../../store/rehearse/kept-overlays.ts';
import { useRehearsal } from '../../../store/rehearse/rehearsal.ts';
import { useTyping } from '../../board/typing/use-typing.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './rehearse.module.css';

/** While somebody types: that every key goes to the board, and the ways out. It hands the keys on. */
export function TypingBar({ toType }: { readonly toType: string }) {
  const board = useBench((bench) => bench.keymap.board);
  const { overlay } = useChosenOverlay(board);
  const active = useRehearsal((state) => state.live !== null);
  const press = useRehearsal((state) => state.press);
  const stopTyping = useRehearsal((state) => state.stopTyping);
  const stop = () => stopTyping('Typed', toType === '' ? null : toType);
  const { enterFullScreen, locked } = useTyping({
    active,
    onKey: ({ kind, code, timeMs, repeat }) => {
      const key = repeat ? undefined : keyUnder(overlay, code);
      if (key !== undefined) press({ t: timeMs, key, type: kind });
    },
    onLeave: stop,
  });
  usePassingTime(active);
  if (!active) return null;
  return (
    <div className={styles.typing} role="status">
      <p>
        <strong>Every key goes to the board.</strong> Hold Esc for a second to stop.
        {locked ? ' The keyboard is locked to this page.' : ''}
      </p>
      {!locked && document.fullscreenEnabled && (
        <Button tone="quiet" onClick={enterFullScreen}>
          Full screen
        </Button>
      )}
      <Button tone="accent" onClick={stop}>
        Stop
      </Button>
    </div>
  );
}

/** Holds and windows that run out without a key are shown as they do. */
function usePassingTime(active: boolean): void {
  const pass = useRehearsal((state) => state.pass);
  useEffect(() => {
    if (!active) return;
    let frame = requestAnimationFrame(function tick(now) {
      pass(now);
      frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [active, pass]);
}
