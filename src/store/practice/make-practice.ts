import { createStore, type StoreApi } from 'zustand/vanilla';
import type { KeyRenaming } from '../../core/board/key-renaming.ts';
import { renamedSession } from '../../core/practice/renamed-session.ts';
import { newSession, type Session } from '../../core/practice/session.ts';
import { type PracticeChoices, readChoices, USUAL_CHOICES } from './practice-choices.ts';
import type { PracticeShelf } from './practice-shelf.ts';

export interface PracticeState {
  /** Whose sessions these are; null before any have been taken up. */
  readonly designId: string | null;
  /** The sessions that are over, in order of time. */
  readonly ended: readonly Session[];
  /** The session that goes on, or waits to be gone on with. */
  readonly current: Session | null;
  readonly choices: PracticeChoices;
  /** Why the last write failed; what is on the page is not lost as long as it is open. */
  readonly failed: string | null;
  /** Takes up the sessions of a design from where they are kept, also those that another tab has added since. */
  open(designId: string): Promise<void>;
  choose(choices: Partial<PracticeChoices>): void;
  start(): void;
  /** Puts the current session in another state and writes it at once. */
  change(session: Session): void;
  end(): void;
  /** Lets the sessions of a design go along with its keys, which were given other ids. */
  renameKeys(designId: string, renaming: KeyRenaming): Promise<void>;
  /** Deletes all practice of a design for good, a current session too. */
  forget(designId: string): Promise<void>;
  /** Waits until everything is written. */
  written(): Promise<void>;
}

/** What the world hands in: the time, ms since 1970, chance in [0, 1), and an id that there is no other of. */
export interface PracticeWorld {
  now(): number;
  random(): number;
  newId(): string;
}

/** The practice of the open design. Every change is written at once; of several that wait only the newest is. */
export function makePractice(shelf: PracticeShelf, world: PracticeWorld): StoreApi<PracticeState> {
  let running: Promise<void> = Promise.resolve();
  let isChosen = false;
  return createStore<PracticeState>((set, get) => {
    /** Work on the shelf goes one after the other. */
    const queue = (work: () => Promise<void>) => {
      running = running.then(work).then(
        () => set({ failed: null }),
        (error) => set({ failed: error instanceof Error ? error.message : String(error) }),
      );
      return running;
    };
    const waiting = new Map<string, { readonly designId: string; readonly session: Session }>();
    const write = (designId: string, session: Session) => {
      waiting.set(session.id, { designId, session });
      void queue(async () => {
        const newest = waiting.get(session.id);
        if (newest === undefined) return;
        waiting.delete(session.id);
        await shelf.write(newest.designId, newest.session);
      });
    };
    return {
      designId: null,
      ended: [],
      current: null,
      choices: USUAL_CHOICES,
      failed: null,
      choose: (chosen) => {
        isChosen = true;
        const choices = { ...get().choices, ...chosen };
        set({ choices });
        void queue(() => shelf.writeChoices(choices));
      },
      written: () => running,
      open: async (designId) => {
        if (get().designId !== designId) set({ designId, ended: [], current: null });
        const before = get().current;
        await queue(async () => {
          const choices = readChoices(await shelf.choices());
          // What was chosen while it was read is newer.
          if (!isChosen) set({ choices });
          const sessions = await shelf.sessionsOf(designId);
          const now = get();
          if (now.designId !== designId) return;
          if (now.current !== before) {
            // What was begun, changed or ended while it was read is newer.
            const newer = [...now.ended, ...(now.current === null ? [] : [now.current])];
            const older = sessions.filter(({ id }) => newer.every((session) => session.id !== id));
            set({ ended: [...older, ...now.ended] });
            return;
          }
          const isKept = sessions.some(({ id }) => id === before?.id);
          const current = sessions.findLast(({ endedAt }) => endedAt === null) ?? (isKept ? null : before);
          set({ current, ended: sessions.filter((session) => session !== current) });
        });
      },
      start: () => {
        const { designId, choices, current } = get();
        if (designId === null || current !== null) return;
        const { minutes, input } = choices;
        const about = { id: world.newId(), seed: world.random(), startedAt: world.now() };
        set({ current: newSession({ ...about, minutes, input }) });
      },
      change: (session) => {
        const { designId, current } = get();
        if (designId === null || current?.id !== session.id || current === session) return;
        set({ current: session });
        write(designId, session);
      },
      end: () => {
        const { designId, current, ended } = get();
        if (designId === null || current === null) return;
        if (current.attempts.length === 0) {
          waiting.delete(current.id);
          set({ current: null });
          void queue(() => shelf.remove(designId, current.id));
          return;
        }
        const over = { ...current, endedAt: world.now() };
        set({ current: null, ended: [...ended, over] });
        write(designId, over);
      },
      renameKeys: (designId, renaming) =>
        queue(async () => {
          for (const session of await shelf.sessionsOf(designId))
            await shelf.write(designId, renamedSession(session, renaming));
          if (get().designId !== designId) return;
          set(({ current, ended }) => ({
            current: current && renamedSession(current, renaming),
            ended: ended.map((session) => renamedSession(session, renaming)),
          }));
        }),
      forget: async (designId) => {
        for (const [id, waits] of waiting) if (waits.designId === designId) waiting.delete(id);
        if (get().designId === designId) set({ ended: [], current: null });
        await queue(() => shelf.removeAll(designId));
      },
    };
  });
}
