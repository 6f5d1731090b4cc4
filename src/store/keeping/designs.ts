import { createStore } from 'zustand/vanilla';
import type { Result } from '../../core/base/result.ts';
import { applyEdit } from '../../core/keymap/apply-edit.ts';
import type { Edit } from '../../core/keymap/edit.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { writeKeymap } from '../../core/keymap/write.ts';
import { useBench } from '../bench.ts';
import type { History } from '../history.ts';
import type { Branch } from './branches.ts';
import { copyName } from './copy-name.ts';
import type {
  DamagedDesign,
  DesignsActions,
  DesignsParts,
  DesignsState,
  DesignsStore,
} from './designs-state.ts';
import { Saver } from './saver.ts';

/** Ties the bench to the shelf: what is edited there is written here, and nowhere while another tab holds it. */
export function makeDesigns(parts: DesignsParts): DesignsStore {
  const keeper = new Keeper(parts);
  return keeper.store;
}

class Keeper {
  readonly store: DesignsStore;
  readonly #parts: DesignsParts;
  readonly #saver: Saver;
  readonly #guard: ReturnType<DesignsParts['guard']>;
  /** The last state of each design that this tab knows to be kept, and when it was written. */
  readonly #known = new Map<string, { readonly keymap: Keymap; readonly at: number | null }>();

  constructor(parts: DesignsParts) {
    this.#parts = parts;
    this.#saver = new Saver(
      (id, keymap) => this.#write(id, keymap),
      (saving) => this.store.setState({ saving }),
      parts.timer,
    );
    this.#guard = parts.guard({
      givingUp: (id) => this.#giveUp(id),
      lost: (id) => this.#lose(id),
      gained: (id) => void this.#gain(id),
      listChanged: () => void this.#list(),
    });
    this.store = createStore<DesignsState & DesignsActions>()(() => ({
      status: 'opening',
      designs: [],
      saving: { state: 'saved' },
      heldElsewhere: false,
      damaged: null,
      branch: null,
      keeps: true,
      start: () => this.#start(),
      openDesign: (id) => this.#openKept(id).then(() => {}),
      addDesign: (keymap) => this.#add(keymap),
      addOrFind: (keymap) => this.#addOrFind(keymap),
      duplicate: (id) => this.#duplicate(id),
      rename: (id, name) => this.#rename(id, name),
      remove: (id) => this.#remove(id),
      takeOver: () => this.#takeOver(),
      openCopy: () => this.#openCopy(),
      readOriginal: () => this.#readOriginal(),
      bringTogether: (bring) => this.#bringTogether(bring),
      keepApart: () => this.#keepApart(),
      flush: () => this.#saver.flush(),
      closeDamaged: () => this.store.setState({ damaged: null }),
    }));
    useBench.subscribe((state, before) => {
      const edited = state.keymap !== before.keymap && state.designId === before.designId;
      if (edited && !state.readOnly) this.#saver.changed(state.designId, state.keymap);
    });
  }

  async #start(): Promise<void> {
    const { shelf, tabMemory } = this.#parts;
    await this.#list();
    const wanted = [tabMemory.read(), await shelf.lastOpen()].filter((id) => id !== null);
    const kept = this.store.getState().designs.map((design) => design.id);
    const candidates = new Set([...wanted.filter((id) => kept.includes(id)), ...kept]);
    if (!(await this.#openFirst(candidates))) await this.#add(await this.#parts.firstDesign());
    this.store.setState({ status: 'ready', keeps: await this.#parts.keeps });
  }

  /** Opens the first of the designs that can be read; the first that cannot stays as `damaged`, to be told. */
  async #openFirst(ids: Iterable<string>): Promise<boolean> {
    let damaged: DamagedDesign | null = null;
    let opened = false;
    for (const id of ids) {
      opened = await this.#openKept(id);
      if (opened) break;
      damaged ??= this.store.getState().damaged;
    }
    this.store.setState({ damaged });
    return opened;
  }

  async #openKept(id: string): Promise<boolean> {
    await this.#saver.flush();
    const checked = await this.#parts.shelf.read(id);
    if (!checked.ok) {
      const name = this.store.getState().designs.find((design) => design.id === id)?.name ?? id;
      this.store.setState({ damaged: { id, name, ...checked.problem } });
      return false;
    }
    const held = await this.#guard.show(id);
    // Read once more now that nobody else can write it: the other tab may just have saved and closed.
    const read = await this.#parts.shelf.read(id);
    await this.#showKept(id, read.ok ? read.value : checked.value, held);
    await this.#remember(id);
    return true;
  }

  async #showKept(id: string, keymap: Keymap, held: boolean): Promise<void> {
    this.#known.set(id, { keymap, at: await this.#parts.shelf.changedAt(id) });
    this.#show(id, keymap, held, await this.#parts.histories.read(id, keymap));
  }

  #show(id: string, keymap: Keymap, held: boolean, history?: History): void {
    useBench.getState().open(id, keymap, history);
    useBench.getState().setReadOnly(!held);
    this.store.setState({ heldElsewhere: !held });
  }

  async #remember(id: string): Promise<void> {
    this.#parts.tabMemory.write(id);
    await this.#parts.shelf.setLastOpen(id);
    await this.#lookForBranch(id);
  }

  async #lookForBranch(id: string, wasOvertaken = false): Promise<void> {
    const branch = await this.#parts.branches.read(id);
    if (useBench.getState().designId !== id) return;
    const original = this.store.getState().designs.find((design) => design.id === branch?.of);
    const known = branch === null || original === undefined;
    this.store.setState({ branch: known ? null : { ...branch, ofName: original.name, wasOvertaken } });
  }

  async #add(keymap: Keymap): Promise<void> {
    await this.#saver.flush();
    const id = this.#parts.newId();
    const held = await this.#guard.show(id);
    this.#show(id, keymap, held);
    this.#saver.changed(id, keymap);
    await this.#saver.flush();
    await this.#remember(id);
  }

  async #addOrFind(keymap: Keymap): Promise<'added' | 'kept before'> {
    await this.#saver.flush();
    const wanted = writeKeymap(keymap);
    for (const { id, name } of this.store.getState().designs) {
      if (name !== keymap.name) continue;
      const kept = await this.#parts.shelf.read(id);
      if (!kept.ok || writeKeymap(kept.value) !== wanted) continue;
      if (id !== useBench.getState().designId) await this.#openKept(id);
      return 'kept before';
    }
    await this.#add(keymap);
    return 'added';
  }

  async #duplicate(id: string): Promise<void> {
    await this.#saver.flush();
    const read = await this.#parts.shelf.read(id);
    if (read.ok) await this.#add(this.#copyOf(read.value));
    else this.store.setState({ damaged: { id, name: id, ...read.problem } });
  }

  async #openCopy(): Promise<void> {
    const { designId, keymap } = useBench.getState();
    await this.#branchOff({ of: designId, base: keymap }, keymap);
  }

  /** Keeps a state as a copy that knows what it is a copy of, and opens it. */
  async #branchOff(branch: Omit<Branch, 'name'>, keymap: Keymap, wasOvertaken = false): Promise<void> {
    const copy = this.#copyOf(keymap);
    await this.#add(copy);
    const { designId } = useBench.getState();
    await this.#parts.branches.write(designId, { ...branch, name: copy.name });
    await this.#lookForBranch(designId, wasOvertaken);
  }

  async #readOriginal(): Promise<Keymap | null> {
    const { branch } = this.store.getState();
    const read = branch === null ? null : await this.#parts.shelf.read(branch.of);
    return read?.ok === true ? read.value : null;
  }

  async #bringTogether(bring: (original: Keymap) => Result<Edit, string>): Promise<string | null> {
    const { branch } = this.store.getState();
    const { designId: copyId, keymap: mine } = useBench.getState();
    if (branch === null) return 'The open design is no copy of another one.';
    if (!(await this.#openKept(branch.of))) return 'The original cannot be opened any more.';
    if (this.store.getState().heldElsewhere) await this.#takeOver();
    const edit = bring(useBench.getState().keymap);
    if (!edit.ok) {
      await this.#openKept(copyId);
      return edit.problem;
    }
    await this.#parts.keepVersion(branch.of, mine, `${mine.name}, before both were brought together`);
    useBench.getState().edit(edit.value);
    await this.#saver.flush();
    await this.#remove(copyId);
    return null;
  }

  async #keepApart(): Promise<void> {
    await this.#parts.branches.remove(useBench.getState().designId);
    this.store.setState({ branch: null });
  }

  #copyOf(keymap: Keymap): Keymap {
    const taken = this.store.getState().designs.map((design) => design.name);
    return { ...keymap, name: copyName(keymap.name, taken) };
  }

  async #rename(id: string, name: string): Promise<void> {
    const bench = useBench.getState();
    if (bench.designId === id) return bench.edit({ edit: 'rename-design', name });
    if (await this.#refusedElsewhere(id)) return;
    const read = await this.#parts.shelf.read(id);
    if (!read.ok) return;
    this.#known.set(id, { keymap: read.value, at: await this.#parts.shelf.changedAt(id) });
    const renamed = applyEdit(read.value, { edit: 'rename-design', name });
    if (renamed.ok) await this.#write(id, renamed.value.keymap);
    else bench.notify({ tone: 'refused', text: renamed.problem, canUndo: false });
  }

  async #remove(id: string): Promise<void> {
    if (await this.#refusedElsewhere(id)) return;
    this.#saver.forget(id);
    await this.#saver.flush();
    await this.#parts.shelf.remove(id);
    await this.#parts.histories.remove(id);
    await this.#parts.branches.remove(id);
    await this.#parts.forget(id);
    this.#known.delete(id);
    await this.#list();
    this.#guard.tellListChanged();
    if (useBench.getState().designId !== id) return;
    const others = this.store.getState().designs.map((design) => design.id);
    if (!(await this.#openFirst(others))) await this.#add(await this.#parts.firstDesign());
  }

  async #refusedElsewhere(id: string): Promise<boolean> {
    const elsewhere = await this.#guard.heldElsewhere(id);
    if (elsewhere) {
      const text = 'This design is open in another tab. Change it there, or close it there first.';
      useBench.getState().notify({ tone: 'refused', text, canUndo: false });
    }
    return elsewhere;
  }

  async #takeOver(): Promise<void> {
    const id = useBench.getState().designId;
    await this.#guard.takeOver(id);
    await this.#gain(id);
  }

  async #gain(id: string): Promise<void> {
    if (useBench.getState().designId !== id) return;
    const read = await this.#parts.shelf.read(id);
    await this.#showKept(id, read.ok ? read.value : useBench.getState().keymap, true);
  }

  async #giveUp(id: string): Promise<void> {
    this.#stopWriting(id);
    await this.#saver.flush();
  }

  /** What was changed here and not written yet goes into a copy: it must neither overwrite anything nor be lost. */
  #lose(id: string): void {
    const waiting = this.#saver.forget(id);
    this.#stopWriting(id);
    const base = this.#known.get(id)?.keymap;
    if (waiting === null || base === undefined || useBench.getState().designId !== id) return;
    this.#branchOff({ of: id, base }, waiting, true).catch(() => undefined);
  }

  #stopWriting(id: string): void {
    if (useBench.getState().designId !== id) return;
    useBench.getState().setReadOnly(true);
    this.store.setState({ heldElsewhere: true });
  }

  async #write(id: string, keymap: Keymap): Promise<void> {
    if (await this.#isOvertaken(id)) return this.#lose(id);
    const at = this.#parts.now();
    await this.#parts.shelf.write(id, keymap, at);
    this.#known.set(id, { keymap, at });
    await this.#writeHistory(id, keymap);
    const before = this.store.getState().designs.find((design) => design.id === id);
    await this.#list();
    if (before?.name !== keymap.name) this.#guard.tellListChanged();
  }

  /** Whether somebody else has written a design since this tab read or wrote it, as tabs can where the browser has no locks. */
  async #isOvertaken(id: string): Promise<boolean> {
    const known = this.#known.get(id);
    if (known === undefined || known.at === null) return false;
    const at = await this.#parts.shelf.changedAt(id);
    return at !== null && at !== known.at;
  }

  async #writeHistory(id: string, keymap: Keymap): Promise<void> {
    const bench = useBench.getState();
    // A newer state is written soon, and its history with it.
    if (bench.designId !== id || bench.keymap !== keymap) return;
    // The design itself is safe by now; a history that cannot be kept is no reason to call it unsaved.
    await this.#parts.histories.write(id, bench).catch(() => undefined);
  }

  async #list(): Promise<void> {
    this.store.setState({ designs: await this.#parts.shelf.list() });
  }
}
