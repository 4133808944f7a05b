import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Branch, split } from './branch.ts';
import type { RackPlan } from './rackPlans.ts';
import type { SharedItem } from './sharedStock.ts';

const [RACKS, ITEMS] = [3, 2];
const table = (most: number) =>
  fc.array(fc.array(fc.integer({ min: 0, max: most }), { minLength: ITEMS, maxLength: ITEMS }), {
    minLength: RACKS,
    maxLength: RACKS,
  });

/** Every way to hang so many of each piece at each rack, within what a branch allows and reserves and what there is. */
function choicesIn({ allowed, reserved }: Branch, items: readonly SharedItem[]): number[][] {
  let choices: number[][] = [[]];
  for (let rack = 0; rack < RACKS; rack++)
    for (let item = 0; item < ITEMS; item++) {
      const counts = Array.from({ length: 1 + allowed[rack]![item]! }, (_, count) => count);
      const enough = counts.filter((count) => count >= reserved[rack]![item]!);
      choices = choices.flatMap((choice) => enough.map((count) => [...choice, count]));
    }
  return choices.filter((choice) =>
    items.every(
      ({ capacity }, item) =>
        choice.reduce((sum, count, i) => sum + (i % ITEMS === item ? count : 0), 0) <= capacity,
    ),
  );
}

it('parts all ways to share the gear out: each is in one of the two branches, and none in both, nor in those of theirs', () => {
  fc.assert(
    fc.property(
      table(2),
      table(2),
      fc.array(fc.integer({ min: 0, max: 3 }), { minLength: ITEMS, maxLength: ITEMS }),
      (allowed, most, stock) => {
        const items = stock.map((capacity) => ({ capacity })) as SharedItem[];
        const halve = (branch: Branch) => {
          const plans = most.map((counts, rack) => ({
            most: counts.map((count, item) => Math.min(count, branch.allowed[rack]![item]!)),
          })) as unknown as RackPlan[];
          const parts = split(branch, plans, items);
          if (parts.length === 0) return parts;
          const found = parts.flatMap((part) => choicesIn(part, items)).map(String);
          expect(found.toSorted()).toEqual(choicesIn(branch, items).map(String).toSorted());
          expect(parts.map(({ whole }) => whole)).toEqual([false, false]);
          return parts;
        };
        const reserved = allowed.map((counts) => counts.map(() => 0));
        // What one rack is promised in a branch stays promised in its branches.
        halve({ whole: true, allowed, reserved, charges: allowed.map(() => []) })
          .flatMap(halve)
          .forEach(halve);
      },
    ),
  );
});
