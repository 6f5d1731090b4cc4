import { useEffect, useRef, useState } from 'react';
import type { Code } from '../../../core/keymap/codes.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './cards.module.css';
import { type Recording, recordedAfter, WAITING } from './recording.ts';

/** Takes the next key that is pressed on the real keyboard, Escape included; a second button gives it up. */
export function RecordKey({ onRecord }: { readonly onRecord: (code: Code) => void }) {
  const [recording, setRecording] = useState<Recording | null>(null);
  const isOn = recording !== null;
  const record = useRef(onRecord);
  record.current = onRecord;
  useEffect(() => (isOn ? listen(setRecording, (code) => record.current(code)) : undefined), [isOn]);
  const button = useRef<HTMLButtonElement>(null);
  const hadRecorded = useRef(false);
  // The one button takes the other's place, and with it the focus.
  useEffect(() => {
    if (isOn || hadRecorded.current) button.current?.focus();
    hadRecorded.current = isOn;
  }, [isOn]);
  if (recording === null) {
    return (
      <Button ref={button} onClick={() => setRecording(WAITING)}>
        Record next key
      </Button>
    );
  }
  return (
    <span className={styles.recording} role="status">
      {recording.state === 'unknown'
        ? `The browser names that key “${recording.code}”, which a keymap does not know. Press another.`
        : 'Press the key…'}
      <Button ref={button} tone="quiet" onClick={() => setRecording(null)}>
        Cancel
      </Button>
    </span>
  );
}

/** Listens before everything else on the page; what is pressed does nothing but being recorded. */
function listen(show: (recording: Recording | null) => void, onRecord: (code: Code) => void): () => void {
  let recording: Recording = WAITING;
  const heard = (event: KeyboardEvent) => {
    event.preventDefault();
    event.stopImmediatePropagation();
    const type = event.type === 'keydown' ? 'down' : 'up';
    recording = recordedAfter(recording, { type, code: event.code, repeat: event.repeat });
    if (recording.state !== 'done') return show(recording);
    swallowRelease();
    show(null);
    onRecord(recording.code);
  };
  window.addEventListener('keydown', heard, true);
  window.addEventListener('keyup', heard, true);
  return () => {
    window.removeEventListener('keydown', heard, true);
    window.removeEventListener('keyup', heard, true);
  };
}

/** The release of a recorded Space or Enter would press the button that then has the focus. */
function swallowRelease(): void {
  const swallow = (event: KeyboardEvent) => {
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  window.addEventListener('keyup', swallow, { capture: true, once: true });
}
