import type { KeyValue } from '../key-value.ts';

/** Named texts of the browser's local storage as kept values; a browser that refuses it keeps none. */
export function localValues(names: readonly string[]): KeyValue {
  const read = (name: string): string | null => {
    try {
      return localStorage.getItem(name);
    } catch {
      return null;
    }
  };
  return {
    get: async (name) => read(name) ?? undefined,
    set: async (name, value) => {
      if (names.includes(name) && typeof value === 'string') localStorage.setItem(name, value);
    },
    del: async (name) => localStorage.removeItem(name),
    names: async () => names.filter((name) => read(name) !== null),
  };
}
