import { samePlain } from '../../core/base/same-plain.ts';
import { checkKeymap } from '../../core/keymap/read.ts';
import type { Keymap } from '../../core/keymap/types.ts';

/** A kept state of a design. */
export interface Version {
  readonly id: string;
  /** As the typist called it; null for one that was kept by itself. */
  readonly name: string | null;
  /** ms since 1970. */
  readonly keptAt: number;
  readonly keymap: Keymap;
}

/** How many versions of a design are kept. Of those kept by themselves the oldest give way; named ones never do. */
export const KEPT_VERSIONS = { named: 100, byThemselves: 40 } as const;

/** Versions are kept by themselves at most once in so long, ms. */
export const BETWEEN_MS = 10 * 60 * 1000;

/** The versions with one more, the newest first. */
export function withVersion(versions: readonly Version[], added: Version): readonly Version[] {
  const all = [added, ...versions.filter(({ id }) => id !== added.id)];
  const sorted = all.toSorted((one, other) => other.keptAt - one.keptAt);
  const unnamed = sorted.filter(({ name }) => name === null);
  const dropped = new Set(unnamed.slice(KEPT_VERSIONS.byThemselves));
  return sorted.filter((version) => !dropped.has(version));
}

/**
 * Whether a state of work is to be kept by itself: when none was for ten minutes and the last one, whoever kept it, is
 * another state.
 */
export function isDue(versions: readonly Version[], keymap: Keymap, now: number): boolean {
  const last = versions.find(({ name }) => name === null);
  if (last !== undefined && now - last.keptAt < BETWEEN_MS) return false;
  return versions[0] === undefined || !samePlain(versions[0].keymap, keymap);
}

/**
 * The versions in what was stored, by their outside alone: a hundred keymaps read as strictly as files would take a
 * moment that somebody who is typing feels. For changing the list; what is shown goes through `readVersions`.
 */
export function listedVersions(stored: unknown): readonly Version[] {
  return Array.isArray(stored) ? stored.filter(isListed) : [];
}

/** The versions in what was stored; those whose keymap cannot be read are left out. */
export function readVersions(stored: unknown): readonly Version[] {
  return listedVersions(stored).flatMap((version) => {
    const read = checkKeymap(version.keymap);
    return read.ok ? [{ ...version, keymap: read.value }] : [];
  });
}

function isListed(value: unknown): value is Version {
  if (typeof value !== 'object' || value === null) return false;
  const { id, name, keptAt, keymap } = value as Partial<Record<keyof Version, unknown>>;
  const isNamed = name === null || typeof name === 'string';
  return typeof id === 'string' && isNamed && typeof keptAt === 'number' && typeof keymap === 'object';
}
