import { Fragment, type RefObject, useEffect } from 'react';
import type { ShownText, Token } from '../../../core/rehearse/shown-text.ts';
import { type Slip, slipTitle } from '../../../core/rehearse/slips.ts';
import { outParts } from './out-parts.ts';
import styles from './rehearse.module.css';

/** What the computer shows; slips are marked where they happened and lead to their place on the time line. */
export function OutText({
  field,
  text,
  slips,
  isLive,
  onSlip,
}: {
  readonly field: RefObject<HTMLElement | null>;
  readonly text: ShownText;
  readonly slips: readonly Slip[];
  readonly isLive: boolean;
  readonly onSlip: (slip: Slip) => void;
}) {
  // The newest stays in view while it grows.
  useEffect(() => {
    if (isLive && field.current !== null) field.current.scrollTop = field.current.scrollHeight;
  });
  const { tokens, takenBack } = text;
  const counted = [
    ...(slips.length === 0 ? [] : [`${slips.length} ${slips.length === 1 ? 'slip' : 'slips'}`]),
    ...(takenBack.length === 0 ? [] : [`${takenBack.length} taken back`]),
  ];
  return (
    <div className={styles.out}>
      <p className={styles.outHead}>
        <span>Comes out</span>
        <span>{counted.join(', ')}</span>
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
      <section ref={field} className={styles.outText} tabIndex={0} aria-label="What comes out">
        {outParts(tokens, slips).map((part) =>
          part.slip === null ? (
            <Tokens key={part.from} tokens={part.tokens} />
          ) : (
            <button
              key={part.from}
              type="button"
              className={styles.slip}
              title={slipTitle(part.slip)}
              aria-label={`Slip: ${slipTitle(part.slip)}`}
              onClick={() => part.slip !== null && onSlip(part.slip)}
            >
              {part.tokens.length === 0 ? '‸' : <Tokens tokens={part.tokens} />}
            </button>
          ),
        )}
        {isLive && <span className={styles.caret} aria-hidden="true" />}
      </section>
    </div>
  );
}

/** Characters in a row are one piece of text; keys that type nothing stand between them by name. */
function Tokens({ tokens }: { readonly tokens: readonly Token[] }) {
  const pieces: { readonly at: number; readonly kind: Token['kind']; text: string }[] = [];
  for (const { text, kind, item } of tokens) {
    const last = pieces.at(-1);
    if (kind === 'char' && last?.kind === 'char') last.text += text;
    else pieces.push({ at: item, kind, text });
  }
  return pieces.map(({ at, kind, text }) => (
    <Fragment key={at}>{kind === 'char' ? text : <span className={styles.key}>{text}</span>}</Fragment>
  ));
}
