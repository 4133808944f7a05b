/** A binary heap of indices, the least key first; equal keys in order of index. Keys live with the caller. */
export interface MinHeap {
  push(index: number, key: number): void;
  /** Takes the least out; null when empty. */
  pop(): { index: number; key: number } | null;
}

export function minHeap(): MinHeap {
  const items: { index: number; key: number }[] = [];
  const before = (a: number, b: number) =>
    items[a]!.key < items[b]!.key || (items[a]!.key === items[b]!.key && items[a]!.index < items[b]!.index);
  const swap = (a: number, b: number) => {
    [items[a], items[b]] = [items[b]!, items[a]!];
  };
  const rise = (at: number) => {
    for (let up = (at - 1) >> 1; at > 0 && before(at, up); up = (at - 1) >> 1) {
      swap(at, up);
      at = up;
    }
  };
  const sink = (at: number) => {
    for (;;) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      let least = at;
      if (left < items.length && before(left, least)) least = left;
      if (right < items.length && before(right, least)) least = right;
      if (least === at) return;
      swap(at, least);
      at = least;
    }
  };
  return {
    push(index, key) {
      items.push({ index, key });
      rise(items.length - 1);
    },
    pop() {
      const least = items[0];
      if (least === undefined) return null;
      const last = items.pop()!;
      if (items.length > 0) {
        items[0] = last;
        sink(0);
      }
      return least;
    },
  };
}
