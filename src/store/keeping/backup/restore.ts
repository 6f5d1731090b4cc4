import { samePlain } from '../../../core/base/same-plain.ts';
import type { Backup } from './backup-file.ts';
import type { BackupPart } from './part.ts';
import { toPlain } from './plain.ts';

/** One thing that restoring writes, or asks about. */
interface Step {
  readonly part: BackupPart;
  readonly name: string;
  readonly value: unknown;
}

/** What restoring one part comes to. */
export interface PartPlan {
  readonly id: string;
  readonly title: string;
  /** What is added, by its name where it has one. */
  readonly added: readonly string[];
  /** What differs from what is kept here under the same name, and is kept beside it. */
  readonly both: readonly string[];
  /** Made into one with what is kept here. */
  readonly united: number;
  /** Differs from what is here, which stays. */
  readonly stays: number;
  /** Kept here just so. */
  readonly same: number;
  /** No value of this part: left out. */
  readonly invalid: number;
  /** Kept here otherwise, and the typist says which of the two stands. */
  readonly toChoose: number;
}

/** What restoring a backup comes to. Nothing is written until it is carried out, and nothing here is ever deleted. */
export interface RestorePlan {
  readonly madeAt: number;
  readonly parts: readonly PartPlan[];
  /** Parts of the file that this page does not know. */
  readonly unknown: readonly string[];
  /** Carries it out; the backup's value is taken in the parts named, and what is here stays in all others. */
  carryOut(fromBackup: ReadonlySet<string>): Promise<void>;
}

/** Holds a backup against what is kept here. `newId`: for what is kept beside something of the same name. */
export async function planRestore(
  backup: Backup,
  parts: readonly BackupPart[],
  newId: () => string,
): Promise<RestorePlan> {
  const planned = await Promise.all(
    parts.flatMap((part) => {
      const entries = backup.parts.get(part.id);
      return entries === undefined ? [] : [planPart(part, entries, newId)];
    }),
  );
  const known = new Set(parts.map(({ id }) => id));
  return {
    madeAt: backup.madeAt,
    parts: planned.map(({ plan }) => plan),
    unknown: [...backup.parts.keys()].filter((id) => !known.has(id)),
    carryOut: async (fromBackup) => {
      for (const { plan, writes, choices } of planned) {
        const all = fromBackup.has(plan.id) ? [...writes, ...choices] : writes;
        for (const { part, name, value } of all) await part.values.set(name, value);
      }
    },
  };
}

async function planPart(part: BackupPart, entries: ReadonlyMap<string, unknown>, newId: () => string) {
  const { values, holds = () => true, isValid = () => true, nameOf = () => '', meeting } = part;
  const names = new Set(await values.names());
  const taken = await namesHere(part, names);
  const writes: Step[] = [];
  const choices: Step[] = [];
  const added: string[] = [];
  const both: string[] = [];
  let [united, stays, same, invalid] = [0, 0, 0, 0];
  for (const [name, value] of entries) {
    if (!holds(name)) continue;
    if (!isValid(value)) {
      invalid += 1;
      continue;
    }
    if (!names.has(name)) {
      writes.push({ part, name, value });
      added.push(nameOf(value));
      continue;
    }
    const here = await values.get(name);
    if (samePlain(toPlain(here), toPlain(value))) same += 1;
    else if (meeting.rule === 'here') stays += 1;
    else if (meeting.rule === 'choose') choices.push({ part, name, value });
    else if (meeting.rule === 'union') {
      united += 1;
      writes.push({ part, name, value: meeting.combine(here, value) });
    } else {
      const copy = meeting.copied?.(value, taken) ?? value;
      taken.push(nameOf(copy));
      both.push(nameOf(copy));
      writes.push({ part, name: meeting.renamed(name, newId()), value: copy });
    }
  }
  const plan: PartPlan = {
    id: part.id,
    title: part.title,
    added,
    both,
    united,
    stays,
    same,
    invalid,
    toChoose: choices.length,
  };
  return { plan, writes, choices };
}

/** The names that values of a part have here, so that a copy gets one of its own. */
async function namesHere({ values, holds = () => true, nameOf }: BackupPart, names: ReadonlySet<string>) {
  if (nameOf === undefined) return [];
  const held = [...names].filter(holds);
  return Promise.all(held.map(async (name) => nameOf(await values.get(name))));
}
