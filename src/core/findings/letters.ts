import type { HostLayout } from '../host/host-layout.ts';
import type { Action } from '../keymap/types.ts';

/** Whether an action types a letter by itself on the typist's computer. */
export function isLetter(host: HostLayout, action: Action): boolean {
  if (action.do === 'char') return /^\p{L}/u.test(action.char);
  if (action.do !== 'key') return false;
  const output = host.outputOf(action.code, { shift: false, level3: false, caps: false });
  return output.kind === 'char' && /^\p{L}/u.test(output.char);
}
