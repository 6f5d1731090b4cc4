/** The part of the Keyboard Map API (a draft of the Web Incubator Community Group) that some browsers have. */
interface KeyboardWithMap {
  getLayoutMap(): Promise<ReadonlyMap<string, string>>;
}

/** The browser's map from codes to characters without modifiers; null where it has none or does not give it. */
export async function keyboardMap(navigator: object): Promise<ReadonlyMap<string, string> | null> {
  const keyboard: unknown = 'keyboard' in navigator ? navigator.keyboard : null;
  if (!hasMap(keyboard)) return null;
  try {
    const map = new Map(await keyboard.getLayoutMap());
    return map.size === 0 ? null : map;
  } catch {
    return null;
  }
}

function hasMap(value: unknown): value is KeyboardWithMap {
  return (
    typeof value === 'object' &&
    value !== null &&
    'getLayoutMap' in value &&
    typeof value.getLayoutMap === 'function'
  );
}
