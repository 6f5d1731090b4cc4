import { create } from 'zustand';
import type { KeyEvent } from '../../core/base/key-event.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import type { Edit } from '../../core/keymap/edit.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { Recorder } from '../../core/rehearse/recorder.ts';
import type { Run } from '../../core/rehearse/run.ts';
import { fromZero, type Stream } from '../../core/rehearse/stream.ts';
import { useBench } from '../bench.ts';
import { type Compared, NOTHING_COMPARED } from './compared.ts';

/** A setting that is tried on the stream without being in the design. */
export interface Try {
  readonly title: string;
  readonly edit: Edit;
}

/** What the rehearse desk works on. */
export interface RehearsalState {
  readonly stream: Stream | null;
  readonly tries: readonly Try[];
  readonly compared: Compared;
  /** The moment that is looked at, ms of the stream; null where none is. */
  readonly cursorMs: number | null;
  /** While somebody types: the run that grows, and a number that changes with it. */
  readonly live: { readonly run: Run; readonly version: number } | null;
}

/** All that can be done on the rehearse desk. */
export interface RehearsalActions {
  take(stream: Stream | null): void;
  setMeant(meant: string | null): void;
  rename(name: string): void;
  tryOut(tried: Try): void;
  dropTry(index: number): void;
  clearTries(): void;
  compareWith(compared: Compared): void;
  setCursor(cursorMs: number | null): void;
  /** Begins to record; times handed in afterwards count from the first key. */
  startTyping(keymap: Keymap, host: HostLayout): void;
  /** A key of the board went down or came up; t in ms of any clock. */
  press(event: KeyEvent): void;
  /** Time has passed without a key; t of the same clock. */
  pass(t: number): void;
  /** Ends the recording; what was typed becomes the stream. */
  stopTyping(name: string, meant: string | null): void;
}

/**
 * How long a key may be on its way from the keyboard to the page, ms: so much behind the clock timers are let run out
 * while typing, so that a key that is still on its way finds them as it should.
 */
const ON_THE_WAY_MS = 24;

interface Recording {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  recorder: Recorder;
  /** The time of the first key on the clock of the keys. */
  start: number | null;
  readonly events: KeyEvent[];
}

let recording: Recording | null = null;

/**
 * The stream that is rehearsed, what is tried on it, and what is being typed. Settings that are tried stay off the
 * design until they are kept.
 */
export const useRehearsal = create<RehearsalState & RehearsalActions>()((set) => ({
  stream: null,
  tries: [],
  compared: NOTHING_COMPARED,
  cursorMs: null,
  live: null,

  take: (stream) => set({ stream, cursorMs: null }),
  setMeant: (meant) => set(({ stream }) => (stream === null ? {} : { stream: { ...stream, meant } })),
  rename: (name) => set(({ stream }) => (stream === null ? {} : { stream: { ...stream, name } })),
  tryOut: (tried) => set(({ tries }) => ({ tries: [...withoutSame(tries, tried), tried] })),
  dropTry: (index) => set(({ tries }) => ({ tries: tries.filter((_, at) => at !== index) })),
  clearTries: () => set({ tries: [] }),
  compareWith: (compared) => set({ compared }),
  setCursor: (cursorMs) => set({ cursorMs }),
  startTyping: (keymap, host) => {
    recording = { keymap, host, recorder: new Recorder(keymap, host), start: null, events: [] };
    set({ live: { run: recording.recorder, version: 0 }, cursorMs: null });
  },
  press: (event) => {
    if (recording === null) return;
    record(recording, event);
    set(grown(recording));
  },
  pass: (t) => {
    if (recording === null || recording.start === null) return;
    const { decisions } = recording.recorder;
    const before = decisions.length;
    recording.recorder.advanceTo(t - recording.start - ON_THE_WAY_MS);
    if (decisions.length > before) set(grown(recording));
  },
  stopTyping: (name, meant) => {
    const typed = recording?.events ?? [];
    recording = null;
    set(
      typed.length === 0
        ? { live: null }
        : { live: null, stream: { name, made: { how: 'typed' }, meant, events: fromZero(typed) } },
    );
  },
}));

// What is tried is tried on one design; on another it would be something else.
useBench.subscribe(({ designId }, before) => {
  if (designId !== before.designId) useRehearsal.setState({ tries: [], compared: NOTHING_COMPARED });
});

function grown({ recorder }: Recording) {
  return ({ live }: RehearsalState) => ({ live: { run: recorder, version: (live?.version ?? 0) + 1 } });
}

/** A key that comes with an earlier time than one that is in already is put in its place, and all is played anew. */
function record(now: Recording, { t, key, type }: KeyEvent): void {
  now.start ??= t;
  const event = { t: Math.round((t - now.start) * 10) / 10, key, type };
  if (now.recorder.feed(event) === undefined) {
    now.events.push(event);
    return;
  }
  const at = now.events.findLastIndex((each) => each.t <= event.t) + 1;
  const events = now.events.toSpliced(at, 0, event);
  const again = new Recorder(now.keymap, now.host);
  if (events.some((each) => again.feed(each) !== undefined)) return;
  now.recorder = again;
  now.events.splice(0, now.events.length, ...events);
}

/** A second try at the same setting takes the place of the first. */
function withoutSame(tries: readonly Try[], { edit }: Try): readonly Try[] {
  return tries.filter((each) => subjectOf(each.edit) !== subjectOf(edit));
}

function subjectOf(edit: Edit): string {
  switch (edit.edit) {
    case 'change-chord':
      return `chord ${edit.chord} ${Object.keys(edit.to).join()}`;
    case 'set-binding-timing':
      return `place ${edit.place.layer} ${edit.place.key} ${Object.keys(edit.timing).join()}`;
    case 'set-timing':
      return `timing ${Object.keys(edit.timing).join()}`;
    default:
      return JSON.stringify(edit);
  }
}
