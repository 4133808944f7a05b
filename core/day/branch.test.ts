import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Branch, split, wholeBranch } from './branch.ts';
import type { RackPlan, RackPlans } from './rackPlans.ts';
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

it('starts where each rack may hang all there is of what it lists, promised nothing and charged nothing', () => {
  const racks = [{ turns: [0, 1] }, { turns: [2] }, { turns: [] }] as unknown as RackPlans[];
  const items = [
    { capacity: 2, users: [{ rack: 0 }, { rack: 2 }] },
    { capacity: 1, users: [{ rack: 1 }, { rack: 2 }] },
  ] as unknown as SharedItem[];
  const nothing = [0, 0];
  expect(wholeBranch(racks, items)).toEqual({
    whole: true,
    allowed: [
      [2, 0],
      [0, 1],
      [2, 1],
    ],
    reserved: [nothing, nothing, nothing],
    charges: [[nothing, nothing], [nothing], []],
  });
});

/** Rack and piece at which all allocations are parted: of each piece there is one, and whatever is not said is nought. */
function placeOfSplit(
  most: number[][],
  prices: number[][][],
  { allowed = most.map(() => [2, 2]), reserved = most.map(() => [0, 0]) } = {},
): [rack: number, item: number] {
  const plans = most.map((counts) => ({ most: counts })) as unknown as RackPlan[];
  const items = [{ capacity: 1 }, { capacity: 1 }] as SharedItem[];
  const [less] = split({ whole: true, allowed, reserved, charges: prices }, plans, items);
  const rack = allowed.findIndex((counts, at) => String(counts) !== String(less!.allowed[at]));
  return [rack, allowed[rack]!.findIndex((count, item) => count !== less!.allowed[rack]![item])];
}

/** The piece alone. */
function pieceOf(most: number[][], ...prices: number[][][]): number {
  return placeOfSplit(most, prices)[1];
}

describe('a branch is split', () => {
  const free = [[[0, 0]], [[0, 0]], [[0, 0]]];

  it('at the piece that costs most over all racks and turns, what is wanted beyond its stock counting double', () => {
    const [once, twice] = [
      [
        [1, 1],
        [0, 0],
      ],
      [
        [1, 1],
        [1, 0],
      ],
    ];
    expect(
      pieceOf(
        once,
        [
          [1, 1],
          [3, 1],
        ],
        [[1, 4]],
      ),
    ).toBe(1);
    expect(
      pieceOf(
        once,
        [
          [1, 1],
          [3, 1],
        ],
        [[1, 2]],
      ),
    ).toBe(0);
    expect(pieceOf(twice, [[2.6, 5]], [[0, 0]])).toBe(0);
    expect(pieceOf(twice, [[2.4, 5]], [[0, 0]])).toBe(1);
    // Where nothing has a price yet: the one that is wanted most.
    expect(
      pieceOf(
        [
          [1, 1],
          [0, 1],
        ],
        [[0, 0]],
        [[0, 0]],
      ),
    ).toBe(1);
  });

  it('at the rack that takes most of it, or may, but rather at one that was promised nothing of it', () => {
    expect(
      placeOfSplit(
        [
          [1, 0],
          [2, 0],
          [1, 0],
        ],
        free,
      ),
    ).toEqual([1, 0]);
    expect(
      placeOfSplit(
        [
          [1, 0],
          [1, 0],
          [1, 0],
        ],
        free,
        {
          allowed: [
            [1, 0],
            [1, 0],
            [2, 0],
          ],
        },
      ),
    ).toEqual([2, 0]);
    expect(
      placeOfSplit(
        [
          [1, 0],
          [2, 0],
          [0, 0],
        ],
        free,
        {
          reserved: [
            [0, 0],
            [1, 0],
            [0, 0],
          ],
        },
      ),
    ).toEqual([0, 0]);
    expect(
      placeOfSplit(
        [
          [1, 0],
          [1, 0],
          [1, 0],
        ],
        free,
      ),
    ).toEqual([0, 0]);
  });
});
