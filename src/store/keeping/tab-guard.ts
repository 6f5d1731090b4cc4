/** What a tab says to the others; every message is about one design or about the list of them. */
type TabMessage =
  | { readonly say: 'hand-over'; readonly id: string }
  | { readonly say: 'handed-over'; readonly id: string }
  | { readonly say: 'list-changed' };

/** How long a tab waits for the other one to write its last changes before it takes the design anyway, ms. */
const HAND_OVER_MS = 1500;

/** What the guard tells its page. */
export interface GuardEvents {
  /** Another tab asks for the design: the last changes are to be written, and nothing more after them. */
  readonly givingUp: (id: string) => Promise<void>;
  /** Another tab has taken the design: nothing may be written any more. */
  readonly lost: (id: string) => void;
  /** The tab that held the design is gone, and this one holds it now. */
  readonly gained: (id: string) => void;
  /** Another tab added, renamed or deleted a design. */
  readonly listChanged: () => void;
}

/**
 * Sees to it that only one tab writes a design. Holding the Web Lock of a design is the right to write it; the
 * browser lets go of it when the tab ends, however it ends. Where the browser has no Web Locks (a page that is
 * not served from a secure address) every tab holds everything.
 */
export class TabGuard {
  readonly #events: GuardEvents;
  readonly #channel = new BroadcastChannel('handful');
  /** The design this tab shows, and what ends its lock or its wait for one. */
  #shown: { readonly id: string; readonly held: boolean; readonly end: () => void } | null = null;
  #answered: ((id: string) => void) | null = null;

  constructor(events: GuardEvents) {
    this.#events = events;
    this.#channel.onmessage = (event: MessageEvent<TabMessage>) => void this.#heard(event.data);
  }

  /** Shows a design in this tab in place of the one before; true where this tab holds it and may write it. */
  async show(id: string): Promise<boolean> {
    this.#leave();
    const held = await this.#request(id, { ifAvailable: true });
    if (!held) this.#wait(id);
    return held;
  }

  /** Takes a design from the tab that holds it, after that tab has written its last changes. */
  async takeOver(id: string): Promise<void> {
    const answer = new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, HAND_OVER_MS);
      this.#answered = (from) => {
        if (from !== id) return;
        clearTimeout(timer);
        resolve();
      };
    });
    this.#say({ say: 'hand-over', id });
    await answer;
    this.#answered = null;
    this.#leave();
    await this.#request(id, { steal: true });
  }

  /** Whether another tab holds a design. */
  async heldElsewhere(id: string): Promise<boolean> {
    if (this.#shown?.id === id) return !this.#shown.held;
    const { held } = (await locks()?.query()) ?? {};
    return held?.some((lock) => lock.name === lockName(id)) ?? false;
  }

  /** Tells the other tabs that the list of designs has changed. */
  tellListChanged(): void {
    this.#say({ say: 'list-changed' });
  }

  /** Lets go of everything. */
  close(): void {
    this.#leave();
    this.#channel.close();
  }

  #say(message: TabMessage): void {
    this.#channel.postMessage(message);
  }

  async #heard(message: TabMessage): Promise<void> {
    if (message.say === 'list-changed') return this.#events.listChanged();
    if (message.say === 'handed-over') return this.#answered?.(message.id);
    const shown = this.#shown;
    if (shown?.id !== message.id || !shown.held) return;
    await this.#events.givingUp(message.id);
    this.#say({ say: 'handed-over', id: message.id });
  }

  #leave(): void {
    this.#shown?.end();
    this.#shown = null;
  }

  /** Settles as soon as it is known whether the lock was got; holds it until the design is left. */
  #request(id: string, options: LockOptions): Promise<boolean> {
    const manager = locks();
    if (manager === undefined) {
      this.#shown = { id, held: true, end: () => {} };
      return Promise.resolve(true);
    }
    return new Promise((resolve) => {
      const held = manager.request(lockName(id), options, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : this.#holding(id);
      });
      held.catch(() => this.#stolen(id));
    });
  }

  #holding(id: string): Promise<void> {
    return new Promise((release) => {
      this.#shown = { id, held: true, end: release };
    });
  }

  /** Waits in the browser's queue, so that the design can be edited here once the other tab is gone. */
  #wait(id: string): void {
    const stop = new AbortController();
    this.#shown = { id, held: false, end: () => stop.abort() };
    locks()
      ?.request(lockName(id), { signal: stop.signal }, () => {
        const holding = this.#holding(id);
        this.#events.gained(id);
        return holding;
      })
      .catch(() => this.#stolen(id));
  }

  /** The lock was taken by another tab, or the wait was given up. */
  #stolen(id: string): void {
    if (this.#shown?.id !== id || !this.#shown.held) return;
    this.#events.lost(id);
    this.#wait(id);
  }
}

function lockName(id: string): string {
  return `handful design ${id}`;
}

function locks(): LockManager | undefined {
  return 'locks' in navigator ? navigator.locks : undefined;
}
