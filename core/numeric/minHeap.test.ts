import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { minHeap } from './minHeap.ts';

it('gives back what was pushed, the least key first', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 20 })), (keys) => {
      const heap = minHeap();
      keys.forEach((key, index) => heap.push(index, key));
      const popped = keys.map(() => heap.pop()!.key);
      expect(popped).toEqual([...keys].sort((a, b) => a - b));
      expect(heap.pop()).toBeNull();
    }),
  );
});
