import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareGear } from './shareGear.ts';

/** The most lifters served, of all ways of giving each pair to one rack and each lifter to one rack or none: every one is looked at. */
function mostByBruteForce(ways: readonly (readonly bigint[])[][], mostARack: number): number {
  let most = 0;
  for (let given = 0; given < RACKS ** PAIRS; given++) {
    const pairsAt = Array.from({ length: RACKS }, () => 0n);
    digits(given, RACKS, PAIRS).forEach((rack, pair) => (pairsAt[rack]! |= 1n << BigInt(pair)));
    const canAt = ways.map((byRack) =>
      byRack.map((sets, rack) => sets.some((set) => (set & ~pairsAt[rack]!) === 0n)),
    );
    for (let placed = 0; placed < (RACKS + 1) ** ways.length; placed++) {
      const rackOf = digits(placed, RACKS + 1, ways.length);
      const served = rackOf.filter((rack, lifter) => rack < RACKS && canAt[lifter]![rack]).length;
      const fullest = Math.max(...pairsAt.map((_, rack) => rackOf.filter((at) => at === rack).length));
      if (fullest <= mostARack) most = Math.max(most, served);
    }
  }
  return most;
}

function isForAll({ rackOf }: { rackOf: (number | null)[] }): boolean {
  return rackOf.every((rack) => rack !== null);
}

function digits(number: number, base: number, length: number): number[] {
  return Array.from({ length }, (_, at) => Math.floor(number / base ** at) % base);
}

const RACKS = 2;
const PAIRS = 4;
const sets = fc.array(fc.bigInt({ min: 0n, max: (1n << BigInt(PAIRS)) - 1n }), { maxLength: 3 });
const asked = fc.record({
  ways: fc.array(fc.array(sets, { minLength: RACKS, maxLength: RACKS }), { maxLength: 5 }),
  mostARack: fc.integer({ min: 1, max: 4 }),
});

describe('gear of one hour shared between racks', () => {
  it('serves as many as the best of all ways of giving each pair to a rack', () => {
    fc.assert(
      fc.property(asked, ({ ways, mostARack }) => {
        const shared = shareGear({ ways, mostARack });
        expect(shared.isMost).toBe(true);
        const served = shared.rackOf.filter((rack) => rack !== null).length;
        expect(served).toBe(mostByBruteForce(ways, mostARack));
      }),
    );
  });

  it('finds a way for everybody where only that is asked for, exactly where the most are all', () => {
    fc.assert(
      fc.property(asked, (one) => {
        expect(isForAll(shareGear({ ...one, onlyAll: true }))).toBe(isForAll(shareGear(one)));
      }),
    );
  });

  it('never hangs a pair at two racks, takes no more than there is room for, and everybody served has one of their ways there', () => {
    fc.assert(
      fc.property(asked, ({ ways, mostARack }) => {
        const { rackOf, pairsAt } = shareGear({ ways, mostARack });
        for (const [rack, pairs] of pairsAt.entries())
          for (const other of pairsAt.slice(rack + 1)) expect(pairs & other).toBe(0n);
        for (const rack of pairsAt.keys())
          expect(rackOf.filter((at) => at === rack).length).toBeLessThanOrEqual(mostARack);
        for (const [lifter, rack] of rackOf.entries())
          if (rack !== null)
            expect(ways[lifter]![rack]!.some((set) => (set & ~pairsAt[rack]!) === 0n)).toBe(true);
      }),
    );
  });

  it('can tell that no more are served than have a turn at the one rack where they can train, whatever another rack has room for', () => {
    const pairs = [...Array.from({ length: 9 }).keys()];
    const any = pairs.flatMap((a) => pairs.slice(a + 1).map((b) => (1n << BigInt(a)) | (1n << BigInt(b))));
    const ways = Array.from({ length: 30 }, (_, lifter) => [[], any.slice(lifter)]);
    const { rackOf, isMost } = shareGear({ ways, mostARack: 12 });
    expect(rackOf.filter((rack) => rack !== null)).toHaveLength(12);
    expect(isMost).toBe(true);
  });

  it('says that it cannot tell where the search was cut off', () => {
    // Two pairs out of twelve, a lifter each at either of six racks: more ways than can be gone through.
    const pairs = Array.from({ length: 12 }, (_, i) => i);
    const ways = pairs.flatMap((a) =>
      pairs.slice(a + 1).map((b) => Array.from({ length: 6 }, () => [(1n << BigInt(a)) | (1n << BigInt(b))])),
    );
    const { rackOf, isMost } = shareGear({ ways, mostARack: 8 });
    expect(isMost).toBe(false);
    expect(rackOf.filter((rack) => rack !== null).length).toBeGreaterThan(0);
  });
});
