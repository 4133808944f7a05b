/** A list that may be too long to be held at once: it is gone through one by one, each time from its beginning. */
export type Long<Item> = Iterable<Item> | AsyncIterable<Item>;

/** The items of a long list, so many at a time. */
export async function* inLots<Item>(list: Long<Item>, most: number): AsyncGenerator<Item[], void> {
  let lot: Item[] = [];
  for await (const item of list) {
    lot.push(item);
    if (lot.length < most) continue;
    yield lot;
    lot = [];
  }
  if (lot.length > 0) yield lot;
}

/** The items of a long list in runs of those that follow each other under one key. */
export async function* inRuns<Item>(
  list: Long<Item>,
  keyOf: (item: Item) => string,
): AsyncGenerator<Item[], void> {
  let run: Item[] = [];
  let key: string | null = null;
  for await (const item of list) {
    const own = keyOf(item);
    if (own !== key && run.length > 0) {
      yield run;
      run = [];
    }
    key = own;
    run.push(item);
  }
  if (run.length > 0) yield run;
}
