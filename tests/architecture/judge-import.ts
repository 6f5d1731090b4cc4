import { posix } from 'node:path';
import { ROOMS, type Room } from './rooms.ts';

/** The room that a file below src lies in; the longest folder name that fits. */
export function roomOf(path: string): Room | undefined {
  return ROOMS.filter(({ room }) => path.startsWith(`src/${room}/`)).sort(
    (a, b) => b.room.length - a.room.length,
  )[0];
}

function packageName(specifier: string): string {
  const parts = specifier.split('/');
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] ?? '');
}

function allows(room: Room, target: string): boolean {
  return room.mayImport.some((name) =>
    name.endsWith('/*') ? target.startsWith(`src/${name.slice(0, -1)}`) : underFolder(target, name),
  );
}

function underFolder(target: string, name: string): boolean {
  return target.startsWith(`src/${name}/`) || target.startsWith(`${name}/`);
}

/** A desk may not look into another desk, though both lie in one room. */
function otherDesk(path: string, target: string): boolean {
  const deskOf = (file: string) => /^src\/ui\/desks\/([^/]+)\//.exec(file)?.[1];
  const [from, to] = [deskOf(path), deskOf(target)];
  return from !== undefined && to !== undefined && from !== to;
}

function judgePackage(path: string, room: Room, specifier: string): string | undefined {
  if (specifier.startsWith('node:')) {
    if (room.room === 'build' || room.room === 'cli') return undefined;
    return `${path} imports ${specifier}: only src/build and src/cli know Node. ${room.instead}`;
  }
  const name = packageName(specifier);
  if (room.packages === null || room.packages.includes(name)) return undefined;
  const list = room.packages.length === 0 ? 'no package' : room.packages.join(', ');
  return `${path} imports the package ${name}: src/${room.room} uses ${list}. Write it down in rooms.ts if it belongs there. ${room.instead}`;
}

/** What is wrong with an import, in a sentence that says what to do instead; undefined where it is allowed. */
export function judgeImport(path: string, specifier: string): string | undefined {
  const room = roomOf(path);
  if (room === undefined) {
    return `${path} lies in no room: put it into a room of tests/architecture/rooms.ts, or add the room there.`;
  }
  if (!specifier.startsWith('.')) return judgePackage(path, room, specifier);
  const target = posix.join(posix.dirname(path), specifier);
  if (otherDesk(path, target)) {
    return `${path} imports ${target} of another desk. ${room.instead}`;
  }
  if (roomOf(target) === room || allows(room, target)) return undefined;
  return `${path} imports ${target}, and src/${room.room} (${room.holds}) may not. ${room.instead}`;
}
