import type { NeedList } from '../core/needs/need-list.ts';
import { needListNamed } from '../core/needs/need-lists.ts';

/** A need list by its name, from those that are built in. */
export function findList(name: string): NeedList | undefined {
  return needListNamed(name);
}
