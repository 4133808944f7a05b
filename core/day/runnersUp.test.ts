import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import type { RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { rankSetups } from './rankSetups.ts';
import { runnersUpTo, speaksFor } from './runnersUp.ts';
import { freeSearch } from './SearchRules.ts';
import { readPair } from './tests/manyPieces.ts';

const set = (hookups: number[], ...chainPairs: number[]) => ({ hookups, chainPairs });
const read = [1.2, 1.5, 1.8, 2.1].map((lengthM) => ({
  lengthM,
  forceN: 200 * (lengthM - lengthM ** -2),
  direction: 'loading' as const,
}));
const hookup = (pairId: string, isRead: boolean) => ({
  pairId,
  hookupId: 'h',
  anchorId: 'a',
  ratedLoadN: null,
  rigged: [
    {
      curves: fitBand({ restLengthM: 1, widthMm: 40, readings: isRead ? read : [] }),
      hookup: { way: 'single' as const },
      anchor: { xM: 0, yM: 0, zM: 0 },
      count: 2,
    },
  ],
  measured: null,
});
/** The pair `a` in two ways, read; `b` and `c` known by their width alone, `d` too but for its pull where it hangs. */
const gear: RackGear = {
  barKg: 20,
  collarsKg: 0,
  discs: [],
  chains: [],
  hookups: [
    hookup('a', true),
    hookup('a', true),
    hookup('b', false),
    hookup('c', false),
    { ...hookup('d', false), measured: { count: 1, verticalAt: [] } },
  ],
};
const codes = (one: number[], best: number[], kg = 0) =>
  speaksFor(
    { set: set(one), barKg: 100 + kg, misfit: 0.03 },
    { set: set(best), barKg: 100, misfit: 0.02 },
    gear,
  );

describe('what speaks for it', () => {
  const little = { code: 'nearlyAsGood', misfitMore: expect.closeTo(0.01, 12) };

  it('is always how little worse it is, and what is better about it', () => {
    expect(codes([2], [3])).toEqual([little]);
    expect(codes([2], [3], 0.5)).toEqual([{ code: 'heavierBar', kg: 0.5 }, little]);
    expect(codes([2], [3], -0.5)).toEqual([{ code: 'lighterBar', kg: 0.5 }, little]);
    expect(codes([2], [0, 3])).toEqual([{ code: 'fewerPieces', pieces: 1 }, little]);
    expect(codes([2, 3], [0])).toEqual([little]);
    expect(codes([1], [0])).toEqual([{ code: 'samePairs' }, little]);
  });

  it('is that all of it was measured only where that is not so of the best', () => {
    expect(codes([0], [2])).toEqual([{ code: 'allMeasured' }, little]);
    expect(codes([0, 2], [1, 3])).toEqual([little]);
    // A pair that was read on a scale where it hangs is measured, whatever is known of its loops.
    expect(codes([4], [2])).toEqual([{ code: 'allMeasured' }, little]);
    // Nothing hangs on the bare bar that could be measured, or be the same pair.
    expect(codes([], [2])).toEqual([{ code: 'fewerPieces', pieces: 1 }, little]);
    const chained = { set: set([], 1), barKg: 100, misfit: 0.02 };
    expect(speaksFor({ ...chained, set: set([], 2), misfit: 0.03 }, chained, gear)).toEqual([little]);
  });

  it('is first of all that it is nearer to the aim where it is by more than a tie, and no little less within one', () => {
    const best = { set: set([3]), barKg: 100, misfit: 0.02 };
    const one = (misfit: number) => speaksFor({ set: set([2]), barKg: 105, misfit }, best, gear);
    const heavier = { code: 'heavierBar', kg: 5 };
    expect(one(0.015)).toEqual([{ code: 'nearerToAim', misfitLess: expect.closeTo(0.005, 12) }, heavier]);
    expect(one(0.0198)).toEqual([heavier, { code: 'nearlyAsGood', misfitMore: 0 }]);
  });
});

const cut = (kg: number) => (kg > 90 ? 85 : kg);

describe('other proposals that are made lighter', () => {
  const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 10, path: [] };
  const task: LifterTask = {
    capability: evenCapability,
    travel,
    referenceKg: 200,
    aim: {
      by: 'percent',
      targets: [
        { basis: 'bar', share: 0.5 },
        { basis: 'lockout', share: 0.7 },
      ],
    },
  };
  const pulled: RackGear = {
    ...gear,
    discs: [{ massKg: 2.5, pairs: 40 }],
    hookups: [400, 300, 500, 650].map((forceN, i) =>
      readPair(`p${i}`, { zM: 0.5, forceN: 0 }, { zM: 1, forceN }),
    ),
  };

  it('are told as they will be loaded, best first', () => {
    const standing = { set: set([0]), barKg: 90 };
    const ranked = rankSetups(task, pulled, { barKg: null, set: null }, freeSearch);
    const asked = runnersUpTo(standing, task, pulled, freeSearch, ranked, 3);
    expect(asked.some(({ speaksFor: said }) => said.some(({ code }) => code === 'heavierBar'))).toBe(true);
    const taken = runnersUpTo(standing, task, pulled, freeSearch, ranked, 3, ({ barKg }) => cut(barKg));
    expect(new Set(taken.map(({ barKg }) => barKg))).toEqual(new Set(asked.map(({ barKg }) => cut(barKg))));
    for (const one of taken) {
      const alone = rankSetups(task, pulled, { barKg: one.barKg, set: one.set }, freeSearch).fromBest()()!;
      expect(one.misfit).toBe(alone.misfit);
      const { speaksFor: said } = one;
      expect(said).toContainEqual({ code: 'lighterBar', kg: 90 - one.barKg });
    }
    // Best first also where every bar is made lighter, the better one more.
    const turned = runnersUpTo(
      standing,
      task,
      pulled,
      freeSearch,
      ranked,
      3,
      (one) => 40 + 1000 * one.misfit,
    );
    for (const list of [taken, turned])
      expect(list.map(({ misfit }) => misfit)).toEqual(
        list.map(({ misfit }) => misfit).toSorted((a, b) => a - b),
      );
  });
});
