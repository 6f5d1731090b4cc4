import { fail, ok, type Result } from '../core/base/result.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import { LIMITS } from '../core/keymap/limits.ts';
import { readKeymap } from '../core/keymap/read.ts';
import type { Keymap } from '../core/keymap/types.ts';
import { hostNames, loadHost } from './host-tables.ts';
import { readText } from './read-text.ts';

/** A design and the host layout that its characters are typed on. */
export interface OpenDesign {
  readonly keymap: Keymap;
  readonly host: HostLayout;
}

/**
 * Reads a neutral keymap and its first host's table. `asked` (layout and variant, "us mac") stands in for the first
 * host: the design's own host of that name, if it has one, else that layout as its table is, on the first host's
 * system. The problem is one sentence a line, each naming the file.
 */
export function openDesign(file: string, asked?: string): Result<OpenDesign, string> {
  const text = readText(file, LIMITS.fileBytes);
  if (!text.ok) return text;
  const read = readKeymap(text.value);
  if (!read.ok) return fail(read.problem.map(({ sentence }) => `${file}: ${sentence}`).join('\n'));
  const keymap = asked === undefined ? read.value : onHost(read.value, asked);
  const [first] = keymap.hosts;
  if (first === undefined) return fail(`${file}: the design names no host.`);
  const host = loadHost(first);
  return host.ok ? ok({ keymap, host: host.value }) : host;
}

/** The design with the asked host first: the design's own of that name with its corrections, else a bare one. */
function onHost(keymap: Keymap, asked: string): Keymap {
  const names = hostNames(asked);
  const [first] = keymap.hosts;
  const own = keymap.hosts.find(
    ({ layout, variant }) => layout === names.layout && variant === names.variant,
  );
  const host = own ?? { system: first?.system ?? 'linux', ...names };
  const others = keymap.hosts.filter((one) => one !== first && one !== own);
  return { ...keymap, hosts: [host, ...others] };
}
