import type { HostChanges } from '../../../../core/coverage/host-changes.ts';
import { codeName } from '../../../../core/host/code-names.ts';
import type { Stroke } from '../../../../core/host/host-layout.ts';
import type { Code } from '../../../../core/keymap/codes.ts';
import type { Correction, Host } from '../../../../core/keymap/types.ts';
import type { KnownHost } from '../../../../store/hosts.ts';

export const SYSTEM_NAMES: Readonly<Record<Host['system'], string>> = {
  linux: 'Linux',
  windows: 'Windows',
  macos: 'macOS',
};

/** A host in few words: "Linux, Polish"; XKB's own names where there is no table of it, or not yet. */
export function hostTitle(host: Host, { table, state }: KnownHost): string {
  const layout = state === 'ready' ? table.title : [host.layout, host.variant].join(' ').trim();
  return `${SYSTEM_NAMES[host.system]}, ${layout}`;
}

/** How far the tables can be trusted on a system; all of them are XKB's. */
export function cautionFor({ system, variant }: Pick<Host, 'system' | 'variant'>): string {
  if (system === 'linux') {
    return 'This is how Linux reads the keys; on Windows and macOS single characters differ.';
  }
  const stated = `This is how Linux reads the keys; on ${SYSTEM_NAMES[system]} single characters differ.`;
  if (system === 'windows') return stated;
  return variant === 'mac'
    ? `${stated} The “mac” variant comes near, but it is an approximation.`
    : `${stated} A “Macintosh” layout of the list comes nearer, but it is an approximation too.`;
}

/** The same in one line, to stand beside the answers; null where the tables are the system's own. */
export function shortCaution({ system }: Pick<Host, 'system'>): string | null {
  return system === 'linux' ? null : 'By Linux’s table; single keys differ.';
}

/** What the third level is chosen with, as keyboards of the system have it printed. */
function thirdLevelKey(system: Host['system']): string {
  return system === 'macos' ? 'Option' : 'AltGr';
}

/** What is held at a level: "by itself", "with Shift and Option". */
export function levelWords(level: Correction['level'], system: Host['system']): string {
  const third = thirdLevelKey(system);
  const held = { plain: 'by itself', shift: 'with Shift', level3: `with ${third}` };
  return level === 'shift-level3' ? `with Shift and ${third}` : held[level];
}

/** What a key gives, in words: the character itself, "nothing", "space", "dead acute". */
export function givesWords(gives: string): string {
  if (gives === '') return 'nothing';
  if (gives === ' ') return 'space';
  if (gives === '\u00a0') return 'no-break space';
  return gives.startsWith('dead_') ? `dead ${gives.slice('dead_'.length).replaceAll('_', ' ')}` : gives;
}

/** Strokes as one would say them: "Option + U, then U". */
export function strokeWords(strokes: readonly Stroke[], system: Host['system']): string {
  const name = (code: Code) => {
    if (code === 'ShiftLeft') return 'Shift';
    return code === 'AltRight' ? thirdLevelKey(system) : codeName(code);
  };
  return strokes.map((stroke) => [...stroke.with, stroke.code].map(name).join(' + ')).join(', then ');
}

/** "12 characters moved, 2 lost, 1 gained"; null where nothing changed. */
export function changesSummary({ moved, lost, gained }: HostChanges): string | null {
  const parts: readonly (readonly [number, string])[] = [
    [moved.length, 'moved'],
    [lost.length, 'lost'],
    [gained.length, 'gained'],
  ];
  const said = parts.filter(([count]) => count > 0);
  const onlyCharacters = [...lost, ...gained].every(({ kind }) => kind === 'char');
  const [first] = said;
  if (first === undefined) return null;
  const thing = onlyCharacters ? 'character' : 'need';
  const things = first[0] === 1 ? thing : `${thing}s`;
  return said.map(([count, what], at) => `${count} ${at === 0 ? `${things} ` : ''}${what}`).join(', ');
}
