import { useEffect, useState } from 'react';
import type { Result } from '../../../core/base/result.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import styles from '../../board/export/export-way.module.css';
import { Button } from '../../widgets/button.tsx';
import { linkTo } from './copy-link.ts';
import { linkLengthWords } from './link-words.ts';

/** The way out by address: shown in full, so that it can be taken by hand too. */
export function LinkWay({ keymap }: { readonly keymap: Keymap }) {
  const [link, setLink] = useState<Result<string, string> | null>(null);
  const [copied, setCopied] = useState('');
  useEffect(() => {
    let isLate = false;
    void linkTo(keymap).then((made) => {
      if (!isLate) setLink(made);
    });
    return () => {
      isLate = true;
    };
  }, [keymap]);
  const copy = (text: string) =>
    navigator.clipboard.writeText(text).then(
      () => setCopied('Copied.'),
      () =>
        setCopied('The browser does not let this page write to the clipboard. Mark the link and copy it.'),
    );
  return (
    <li className={styles.way}>
      <div className={styles.words}>
        <h3>Link</h3>
        <p>the whole design in an address, its notes and diary too; no server gets it</p>
        {link?.ok === true && (
          <>
            <p className={styles.name}>{linkLengthWords(link.value.length)}</p>
            <input
              className={styles.link}
              aria-label="Link to this design"
              readOnly
              value={link.value}
              onFocus={(event) => event.target.select()}
            />
          </>
        )}
        {link?.ok === false && <p className={styles.name}>{link.problem}</p>}
      </div>
      {link?.ok === true && (
        <Button aria-label="Copy: Link" onClick={() => void copy(link.value)}>
          Copy
        </Button>
      )}
      <p role="status" className={styles.copied}>
        {copied}
      </p>
    </li>
  );
}
