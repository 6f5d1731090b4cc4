import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import type { Prompt } from '../../../core/practice/drill.ts';
import type { Session } from '../../../core/practice/session.ts';
import styles from './practise.module.css';
import { signOf } from './practise-words.ts';

/** The prompt in large: what is done falls back, what is asked for stands on a bar, what went wrong keeps a mark. */
export function PromptLine({
  prompt,
  session,
  keymap,
  host,
}: {
  readonly prompt: Prompt;
  readonly session: Session;
  readonly keymap: Keymap;
  readonly host: HostLayout;
}) {
  const { position, attempts, slip } = session;
  const done = attempts.slice(attempts.length - Math.min(position, attempts.length));
  return (
    <ol
      className={styles.prompt}
      aria-label="To be typed"
      data-place={`${session.prompts.length}.${position}`}
    >
      {prompt.needs.map((need, at) => {
        const { glyph, name, isWord } = signOf(need, keymap, host);
        const wasWrong = at < position ? done[at]?.right === false : at === position && slip !== null;
        const state = at < position ? 'done' : at === position ? 'asked' : 'ahead';
        return (
          <li
            // biome-ignore lint/suspicious/noArrayIndexKey: the same sign may stand twice; places do not move
            key={at}
            className={styles.sign}
            data-state={state}
            data-wrong={wasWrong}
            data-word={isWord}
            data-need={need}
            aria-current={state === 'asked' ? 'step' : undefined}
          >
            <span aria-hidden="true">{glyph}</span>
            <span className={styles.spoken}>
              {name}
              {state === 'done' ? (wasWrong ? ', typed, wrong at first' : ', typed') : ''}
            </span>
          </li>
        );
      })}
    </ol>
  );
}
