import { describe, expect, it } from 'vitest';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { allocate } from './allocate.ts';
import type { LifterTask } from './misfit.ts';
import { rankLifters } from './rankLifters.ts';
import { rankSetups } from './rankSetups.ts';
import { freeSearch } from './SearchRules.ts';
import { manyPieces } from './tests/manyPieces.ts';

const travel = { bottomM: 0.6, lockoutM: 1.1, gravityMps2: 9.81, path: [] };
const free = { barKg: null, set: null };

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
    ranked.forEach((one, i) => {
      const alone = rankSetups(lifters[i]!.task, gear);
      if (!('ranking' in one)) throw new Error(one.reason);
      expect(one.ranking.sets).toEqual(alone.sets);
      expect(one.ranking.leftOut).toBeUndefined();
      expect(one.ranking.fromBest()()).toEqual(alone.fromBest()());
    });
  });

  it('are common to those of one rack where the stock is too large, and the best of each is among them', () => {
    const gear = manyPieces(60, 6);
    const lifters = [2000, 3200].map((strengthN) => ({ task: taskOf(strengthN), rack: 0, fixed: free }));
    const ranked = rankLifters(lifters, [gear], freeSearch, () => 0);
    const rankings = ranked.map((one) => {
      if (!('ranking' in one)) throw new Error(one.reason);
      return one.ranking;
    });
    expect(rankings[0]!.sets).toEqual(rankings[1]!.sets);
    rankings.forEach((ranking, i) => {
      const limits = { mostSets: 5000 };
      const alone = rankSetups(lifters[i]!.task, gear, free, freeSearch, limits).fromBest()()!;
      expect(ranking.fromBest()()!.misfit).toBeLessThanOrEqual(alone.misfit + 1e-9);
      expect(ranking.leftOut!.count).toBeGreaterThan(6e10);
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
    const lifters = [{ ...broken, aim }, taskOf(2600)].map((task) => ({ task, rack: 0, fixed: free }));
    const [none, some] = rankLifters(lifters, [manyPieces(3, 1)], freeSearch, () => 0);
    expect(none).toEqual({ reason: expect.stringContaining('distance from the aim') });
    expect(some).toHaveProperty('ranking');
  });

  it('are still given, with what is not known of the others, where there is no time at all', () => {
    const lifters = [{ task: taskOf(2600), rack: 0, fixed: free }];
    const [one] = rankLifters(lifters, [manyPieces(60, 6)], freeSearch, () => 1);
    if (!('ranking' in one!)) throw new Error(one!.reason);
    expect(one.ranking.sets.length).toBeGreaterThan(0);
    expect(one.ranking.leftOut!.count).toBeGreaterThan(6e10);
  });
});
