import { readSession } from '../../core/practice/read-session.ts';
import type { Session } from '../../core/practice/session.ts';
import type { KeyValue } from '../keeping/key-value.ts';

/** The kept sessions, each under its design and by itself, so that two tabs never overwrite each other. */
export class PracticeShelf {
  readonly #values: KeyValue;

  constructor(values: KeyValue) {
    this.#values = values;
  }

  /** The sessions of a design in order of time; what cannot be read is left where it is and passed over. */
  async sessionsOf(designId: string): Promise<readonly Session[]> {
    const names = await this.#namesOf(designId);
    const read = await Promise.all(names.map(async (name) => readSession(await this.#values.get(name))));
    return read
      .filter((session) => session !== null)
      .sort((one, other) => one.startedAt - other.startedAt || (one.id < other.id ? -1 : 1));
  }

  async write(designId: string, session: Session): Promise<void> {
    await this.#values.set(nameOf(designId, session.id), session);
  }

  async remove(designId: string, id: string): Promise<void> {
    await this.#values.del(nameOf(designId, id));
  }

  /** Takes all sessions of a design away for good. */
  async removeAll(designId: string): Promise<void> {
    for (const name of await this.#namesOf(designId)) await this.#values.del(name);
  }

  /** How the typist wanted to practise last; whatever was stored. */
  choices(): Promise<unknown> {
    return this.#values.get(CHOICES);
  }

  async writeChoices(choices: object): Promise<void> {
    await this.#values.set(CHOICES, choices);
  }

  async #namesOf(designId: string): Promise<readonly string[]> {
    return (await this.#values.names()).filter((name) => name.startsWith(nameOf(designId, '')));
  }
}

const CHOICES = 'choices';

function nameOf(designId: string, id: string): string {
  return `session:${designId}:${id}`;
}
