import type { Result } from '../../core/base/result.ts';
import type { RefusedStream } from '../../core/engine/types.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { rehearse } from '../../core/rehearse/recorder.ts';
import { withTries } from '../../core/rehearse/remedies.ts';
import type { Run } from '../../core/rehearse/run.ts';
import { type Slip, slipsOf } from '../../core/rehearse/slips.ts';
import type { Stream } from '../../core/rehearse/stream.ts';
import { useBench } from '../bench.ts';
import { useHost } from '../hosts.ts';
import { type Try, useRehearsal } from './rehearsal.ts';

/** What playing the stream comes to; null while there is no stream. */
export type Played = Result<Run, RefusedStream> | null;

interface Kept {
  readonly host: HostLayout;
  readonly events: Stream['events'];
  readonly played: Result<Run, RefusedStream>;
}

const played = new WeakMap<Keymap, Kept>();

/** Plays a stream on a design; the same events on the same design and host are played once, however many ask. */
function playedOn(keymap: Keymap, host: HostLayout, events: Stream['events']): Result<Run, RefusedStream> {
  const known = played.get(keymap);
  if (known?.host === host && known.events === events) return known.played;
  const now = { host, events, played: rehearse(keymap, host, events) };
  played.set(keymap, now);
  return now.played;
}

const tried = new WeakMap<Keymap, { readonly tries: readonly Try[]; readonly keymap: Keymap }>();

function withTried(keymap: Keymap, tries: readonly Try[]): Keymap {
  if (tries.length === 0) return keymap;
  const known = tried.get(keymap);
  if (known?.tries === tries) return known.keymap;
  const made = withTries(
    keymap,
    tries.map(({ edit }) => edit),
  );
  tried.set(keymap, { tries, keymap: made });
  return made;
}

/** The open design with what is tried on it, and its host. */
export function useTried(): { readonly keymap: Keymap; readonly host: HostLayout } {
  const keymap = useBench((bench) => bench.keymap);
  const tries = useRehearsal((state) => state.tries);
  const { host } = useHost(keymap);
  return { keymap: withTried(keymap, tries), host };
}

/** The stream on the open design with what is tried on it. */
export function usePlayed(): Played {
  const { keymap, host } = useTried();
  const stream = useRehearsal((state) => state.stream);
  return stream === null ? null : playedOn(keymap, host, stream.events);
}

/** The stream on what it is compared with; null where that is nothing. */
export function useComparedRun(): Played {
  const design = useBench((bench) => bench.keymap);
  const { stream, compared } = useRehearsal();
  const keymap = compared.with === 'another design' ? compared.keymap : design;
  const { host } = useHost(keymap);
  if (stream === null || compared.with === 'nothing') return null;
  return playedOn(keymap, host, stream.events);
}

const slipsOfRun = new WeakMap<Run, { readonly meant: string; readonly slips: readonly Slip[] }>();

/** The slips of a run against the stream's meant text, worked out once for each. */
export function slipsIn(run: Run, meant: string | null): readonly Slip[] {
  if (meant === null) return [];
  const known = slipsOfRun.get(run);
  if (known?.meant === meant) return known.slips;
  const slips = slipsOf(run, meant);
  slipsOfRun.set(run, { meant, slips });
  return slips;
}
