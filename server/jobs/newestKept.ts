export interface NewestKept<Value> {
  has(key: string): boolean;
  get(key: string): Value | undefined;
  /** Kept as the newest. */
  set(key: string, value: Value): void;
  /** Lets all go that are such. */
  forget(isSuch: (value: Value) => boolean): void;
}

/** So many values by their keys; beyond that the one that was set the longest ago goes. */
export function newestKept<Value>(most: number): NewestKept<Value> {
  const kept = new Map<string, Value>();
  return {
    has: (key) => kept.has(key),
    get: (key) => kept.get(key),
    set(key, value) {
      kept.delete(key);
      kept.set(key, value);
      if (kept.size > most) kept.delete(kept.keys().next().value!);
    },
    forget(isSuch) {
      for (const [key, value] of kept) if (isSuch(value)) kept.delete(key);
    },
  };
}
