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
