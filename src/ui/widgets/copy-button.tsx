import { useState } from 'react';
import { Button } from './button.tsx';

/** Puts a text on the clipboard and says whether the browser let it. */
export function CopyButton({ label, textOf }: { readonly label: string; readonly textOf: () => string }) {
  const [said, setSaid] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(textOf());
      setSaid('Copied.');
    } catch {
      setSaid('The browser does not let this page write to the clipboard.');
    }
  };
  return (
    <p>
      <Button onClick={() => void copy()}>{label}</Button> <span role="status">{said}</span>
    </p>
  );
}
