import { describe, expect, it } from 'vitest';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { allocate } from './allocate.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { type Ranked, rankLifters } from './rankLifters.ts';
import { rankSetups } from './rankSetups.ts';
import { freeSearch } from './SearchRules.ts';
import type { SetupScore } from './SetupRanking.ts';
import { manyPieces } from './tests/manyPieces.ts';

const travel = { bottomM: 0.6, lockoutM: 1.1, gravityMps2: 9.81, path: [] };
const keyOf = (set: GearSet) => JSON.stringify(set);
const pulledN = ({ hookups }: RackGear, set: GearSet) =>
  set.hookups.reduce((sum, index) => sum + hookups[index]!.measured!.verticalAt[1]!.forceN, 0);
const free = { barKg: null, set: null };
const ranksOf = (ranked: readonly Ranked[]) =>
  ranked.map((one) => {
    if (!('ranking' in one)) throw new Error(one.reason);
    return one.ranking;
  });

function taskOf(strengthN: number): LifterTask {
  const capability = {
    ...evenCapability,
    strengthN,
    slope: 0.8,
    curvature: -0.3,
    dip: { depth: 0.1, at: 0.4, width: 0.2 },
    movedBodyKg: 50,
    range: { fromM: 0.6, toM: 1.1 },
  };
  const aim = { by: 'capability' as const, bottomShare: 0.85, lockoutShare: 0.4 };
  return { capability, travel, aim, referenceKg: strengthN / 12 };
}

describe('the sets of all lifters', () => {
  it('are those of each alone where the stock is small enough to try every set', () => {
    const gear = manyPieces(6, 1);
    const lifters = [2000, 2600, 3200].map((strengthN) => ({
      task: taskOf(strengthN),
      rack: 0,
      fixed: free,
    }));
    const ranked = rankLifters(lifters, [gear], freeSearch, () => 0);
    ranksOf(ranked).forEach((ranking, i) => {
      const alone = rankSetups(lifters[i]!.task, gear);
      expect(ranking.sets).toEqual(alone.sets);
      expect(ranking.leftOut).toBeUndefined();
      expect(ranking.fromBest()()).toEqual(alone.fromBest()());
    });
  });

  it('are common to those of one rack where the stock is too large, and the best of each is among them', () => {
    const gear = manyPieces(60, 6);
    const lifters = [2000, 3200].map((strengthN) => ({ task: taskOf(strengthN), rack: 0, fixed: free }));
    const ranked = rankLifters(lifters, [gear], freeSearch, () => 0);
    const rankings = ranksOf(ranked);
    const common = new Set(rankings[0]!.sets.map(keyOf));
    expect(rankings[1]!.sets).toEqual(rankings[0]!.sets);
    expect(common.size).toBeLessThan(1000);
    rankings.forEach((ranking, i) => {
      const alone = rankSetups(lifters[i]!.task, gear);
      const next = alone.fromBest();
      const isCommon = ({ index }: SetupScore) => common.has(keyOf(alone.sets[index]!));
      for (let place = 0; place < 300; place++) expect(isCommon(next()!)).toBe(true);
      // Up to three of 60 pairs, and 0 to 10 pairs of each of six kinds of chain.
      const { count, from } = ranking.leftOut!;
      expect(common.size + count).toBe((1 + 60 + 1770 + 34_220) * 11 ** 6);
      // Left out are those that nobody looked at, and those that were looked at and are not common.
      let beyond = next()!;
      while (isCommon(beyond)) beyond = next()!;
      expect(from).toBe(Math.min(alone.leftOut!.from, beyond.misfit));
    });
    const { total, proof } = allocate({
      racks: [gear],
      lifters: rankings.map((ranking) => ({ rack: 0, ranking, weight: 1, setFixed: false })),
      bandChangeMinutes: 1,
      oneSetPull: 0.5,
      outOfTime: () => false,
    });
    expect(proof.setsLeftOut).toBeGreaterThan(1.2e11);
    expect(proof.bound).toBeGreaterThan(0);
    expect(proof.bound).toBeLessThanOrEqual(total);
  });

  it('are none of a lifter whose values nothing can be reckoned with, and those of all others beside', () => {
    const broken = { ...taskOf(2600), referenceKg: Number.NaN };
    const aim = { by: 'percent' as const, targets: [{ basis: 'bar' as const, share: 0.5 }] };
    const unmoved = { ...taskOf(2600), travel: { ...travel, lockoutM: 0.6 } };
    const tasks = [{ ...broken, aim }, unmoved, taskOf(2600)];
    const lifters = tasks.map((task) => ({ task, rack: 0, fixed: free }));
    const [none, still, some] = rankLifters(lifters, [manyPieces(3, 1)], freeSearch, () => 0);
    expect(none).toEqual({ reason: expect.stringContaining('distance from the aim') });
    expect(still).toEqual({ reason: expect.stringContaining('must be above bottomM') });
    expect(some).toHaveProperty('ranking');
  });

  it('are still given, with what is not known of the others, where there is no time at all, and to each only what he may hold', () => {
    const most = { barKg: Number.POSITIVE_INFINITY, lockoutKg: 40, heaviestStep: 1 };
    const gear = manyPieces(60, 6);
    const lifters = [taskOf(2600), { ...taskOf(2600), most }].map((task) => ({ task, rack: 0, fixed: free }));
    const [some, held] = ranksOf(rankLifters(lifters, [gear], freeSearch, () => 1)).map(
      ({ sets, leftOut }) => {
        expect(sets.length).toBeGreaterThan(0);
        expect(leftOut!.count).toBeGreaterThan(6e10);
        return Math.max(...sets.map((set) => pulledN(gear, set)));
      },
    );
    // Beside the empty bar of 20 kg the second may hold 20.
    expect(held).toBeLessThanOrEqual(20 * 9.81);
    expect(some).toBeGreaterThan(20 * 9.81);
  });

  it('are looked for in half of the time, an equal part of it for each lifter, and fewer of each where there are many', () => {
    const gear = manyPieces(60, 6);
    const lifters = [0, 1].map((rack) => ({ task: taskOf(2600), rack, fixed: free }));
    // At three tenths of the time the first has had his quarter; the second's ends with half of it, and not a look before: the
    // bound of alike lifters tells.
    let turn = 0;
    const spent = () => [0.3, 0.5][turn]!;
    const [hurried, whole] = ranksOf(
      rankLifters(lifters, [gear, gear], freeSearch, spent, (at) => {
        turn = at;
      }),
    );
    expect(hurried!.leftOut!.from).toBeLessThan(whole!.leftOut!.from);
    // 1 + 57 + 1596 + 29_260 sets: one lifter's are listed, those of a dozen left to what time there is.
    const dozen = Array.from({ length: 12 }, () => ({ task: taskOf(2600), rack: 0, fixed: free }));
    const many = manyPieces(57, 0);
    for (const ranking of ranksOf(rankLifters(dozen, [many], freeSearch, () => 1)))
      expect(ranking.leftOut!.count).toBeGreaterThan(0);
  });

  it('hold what hangs already for another at the rack, however many there are', () => {
    const set = { hookups: [0, 1, 2], chainPairs: [10, 10, 10, 10, 10, 10] };
    const lifters = [
      { task: taskOf(2600), rack: 0, fixed: { ...free, set } },
      { task: taskOf(2600), rack: 0, fixed: free },
    ];
    const [fixed, open] = ranksOf(rankLifters(lifters, [manyPieces(60, 6)], freeSearch, () => 1));
    expect(fixed!.sets).toEqual([set]);
    expect(open!.sets).toContainEqual(set);
  });
});
