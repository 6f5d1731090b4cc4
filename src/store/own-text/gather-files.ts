/** How many files are read at most. */
export const MOST_FILES = 20_000;

/** Files that were found, and whether there were more than are read. */
export interface GatheredFiles {
  readonly files: readonly File[];
  readonly moreThanLimit: boolean;
}

/** Folders that hold what programs wrote or what was fetched, not what somebody typed. */
const NOT_TYPED = new Set(['node_modules', '__pycache__']);

/** Whether a name of a path is left out: hidden ones, and folders of other people's work. */
function isLeftOut(name: string): boolean {
  return (name.startsWith('.') && name !== '.' && name !== '..') || NOT_TYPED.has(name);
}

/** The files of a chosen folder, or files chosen one by one, but for those left out by their path; at most `most`. */
export function gatherChosen(files: Iterable<File>, most = MOST_FILES): GatheredFiles {
  const kept: File[] = [];
  for (const file of files) {
    // The first name is the folder that was chosen: it is meant, whatever it is called.
    const names = file.webkitRelativePath.split('/').slice(1);
    if (names.some(isLeftOut)) continue;
    if (kept.length === most) return { files: kept, moreThanLimit: true };
    kept.push(file);
  }
  return { files: kept, moreThanLimit: false };
}

/**
 * The files of what was dropped, folders walked through in the order in which the system lists them. What cannot be read is
 * passed over.
 */
export async function gatherEntries(
  entries: readonly FileSystemEntry[],
  most = MOST_FILES,
): Promise<GatheredFiles> {
  const files: File[] = [];
  const waiting = [...entries].reverse();
  for (let entry = waiting.pop(); entry !== undefined; entry = waiting.pop()) {
    if (isFileEntry(entry)) {
      const file = await fileOf(entry);
      if (file === null) continue;
      if (files.length === most) return { files, moreThanLimit: true };
      files.push(file);
    } else if (isFolderEntry(entry)) {
      const inside = (await childrenOf(entry)).filter(({ name }) => !isLeftOut(name));
      waiting.push(...inside.reverse());
    }
  }
  return { files, moreThanLimit: false };
}

/**
 * The files of a drop, where it has no entries those that it names. To be called while the drop's event is being handled:
 * its entries are gone afterwards.
 */
export function gatherDrop({ items, files }: DataTransfer): Promise<GatheredFiles> {
  const entries = [...items].map((item) => item.webkitGetAsEntry()).filter((entry) => entry !== null);
  return entries.length > 0 ? gatherEntries(entries) : Promise.resolve(gatherChosen(files));
}

function isFileEntry(entry: FileSystemEntry): entry is FileSystemFileEntry {
  return entry.isFile;
}

function isFolderEntry(entry: FileSystemEntry): entry is FileSystemDirectoryEntry {
  return entry.isDirectory;
}

function fileOf(entry: FileSystemFileEntry): Promise<File | null> {
  return new Promise((resolve) => entry.file(resolve, () => resolve(null)));
}

/** All that lies in a folder: the platform hands it out a hundred at a time. */
async function childrenOf(folder: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((resolve) =>
      reader.readEntries(resolve, () => resolve([])),
    );
    if (some.length === 0) return all;
    all.push(...some);
  }
}
