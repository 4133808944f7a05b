import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squatCapability } from '#core/rep/tests/capabilities.ts';
import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { ascend, FINE } from '../rep/ascend.ts';
import type { Capability } from '../rep/Capability.ts';
import { simulateRep } from '../rep/simulateRep.ts';
import { repEffortS } from './repEffort.ts';
import { repsPossible } from './repsPossible.ts';
import { repTable } from './repTable.ts';
import { lastBlock, simulateSession } from './simulateSession.ts';
import { repAtSurplus, simulateSet } from './simulateSet.ts';
import { type Tiring, tiringOf } from './Tiring.ts';

const load: Load = {
  barKg: 150,
  bands: [],
  hungBands: [
    {
      verticalAt: [
        { zM: 0.9, forceN: 0 },
        { zM: 1.5, forceN: 400 },
      ],
      count: 1,
    },
  ],
  chains: [],
  bottomM: 0.9,
  lockoutM: 1.5,
  gravityMps2: 9.80665,
  path: [],
};
const lifter: Capability = { ...squatCapability, movedBodyKg: 80 };
const tiring = tiringOf('squat');
const barKg = fc.double({ min: 60, max: 190, noNaN: true });
const restS = fc.integer({ min: 0, max: 400 });
const tableOf = (strengthN: number) =>
  repTable(compileLoad(load), { ...lifter, strengthN }, tiring.loweringS)!;
const session = (kg: number, sets: number, reps: number, rest: number, how: Tiring = tiring) => {
  const table = repTable(compileLoad({ ...load, barKg: kg }), lifter, how.loweringS)!;
  return simulateSession([{ table, sets, reps, restS: rest }], how)[0]!;
};

describe('effort of a rep', () => {
  it('is share times time where share and speed hardly change: a constant load at terminal speed', () => {
    // No shape, no rebound, no straining: the bar soon runs at (1 - share) of the top speed, share 0.9 all the way.
    const even = { ...lifter, slope: 0, curvature: 0, dip: { ...lifter.dip, depth: 0 }, rebound: 0 };
    const plain = { ...load, hungBands: [] };
    const compiled = compileLoad(plain);
    const strong = { ...even, strainAfterS: 1e3, strengthN: (230 * load.gravityMps2) / 0.9 };
    const ascent = ascend(compiled, strong, FINE);
    const end = ascent.states.at(-1)!;
    expect(repEffortS(compiled, strong, ascent, 2)).toBeCloseTo(0.9 * (end.t + 2), 9);
    // Of a load that grows by the height, and of a strength that does not, the way down takes the share halfway.
    const rising = compileLoad({ ...load, barKg: 100 });
    const downS = repEffortS(rising, strong, ascent, 3) - repEffortS(rising, strong, ascent, 0);
    const halfwayN = (100 + 80) * load.gravityMps2 + 200;
    expect(downS).toBeCloseTo((3 * halfwayN) / strong.strengthN, 9);
  });

  it('adds the share up along the way as the bar goes: of a load that grows with the height by the time spent at each', () => {
    const even = { ...lifter, slope: 0, curvature: 0, dip: { ...lifter.dip, depth: 0 }, strengthN: 4200 };
    const compiled = compileLoad(load);
    const { samples } = simulateRep(load, even, { samples: 4001 });
    const shares = samples.map(({ loadN }) => (loadN + 80 * load.gravityMps2) / even.strengthN);
    const sum = shares.reduce(
      (total, share, i) => total + share * (i === 0 || i === 4000 ? 1 : i % 2 === 1 ? 4 : 2),
      0,
    );
    const expectedS = (sum * samples[1]!.tS) / 3;
    expect(repEffortS(compiled, even, ascend(compiled, even, FINE), 0) / expectedS).toBeCloseTo(1, 5);
  });

  it('never counts more than the time of the way up and down', () => {
    fc.assert(
      fc.property(fc.double({ min: 60, max: 900, noNaN: true }), (kg) => {
        const compiled = compileLoad({ ...load, barKg: kg });
        const ascent = ascend(compiled, lifter, FINE);
        const effortS = repEffortS(compiled, lifter, ascent, 1);
        expect(effortS).toBeGreaterThan(0);
        expect(effortS).toBeLessThanOrEqual(ascent.states.at(-1)!.t + 1 + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a set', () => {
  it('begins with the rep of the rested lifter', () => {
    fc.assert(
      fc.property(barKg, (kg) => {
        const heavy = { ...load, barKg: kg };
        const [first] = simulateSet(repTable(compileLoad(heavy), lifter, 1)!, 3, tiring);
        const rep = simulateRep(heavy, lifter);
        expect(first!.made).toBe(rep.made);
        expect(first!.meanSpeedMps).toBeCloseTo(rep.meanSpeedMps, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('is slower with every rep, and the first miss ends it where a rep so weak would stop', () => {
    const table = repTable(compileLoad(load), lifter, tiring.loweringS)!;
    const reps = simulateSet(table, 50, tiring);
    expect(reps.length).toBeLessThan(50);
    const last = reps.pop()!;
    expect(last.made).toBe(false);
    expect(last.stoppedAtS).toBeGreaterThan(0);
    expect(last.stoppedAtS).toBeLessThan(1);
    reps.slice(1).forEach((rep, i) => expect(rep.meanSpeedMps).toBeLessThan(reps[i]!.meanSpeedMps));
    expect(repsPossible(load, lifter, tiring)).toBe(reps.length);
  });

  it('is none where the way up takes longer than anybody can strain, however strong', () => {
    // 0.6 m at a metre a second, where each 0.05 s of straining leaves a third of the push: a ten-thousandth at lockout.
    const slow = { ...lifter, maxSpeedMps: 1, strainAfterS: 0.1, strainTimeS: 0.05 };
    expect(repTable(compileLoad(load), slow, 1)).toBeNull();
    expect(repsPossible(load, slow, tiring)).toBe(0);
  });

  it('never holds more reps with more on the bar, nor with a lifter who tires sooner', () => {
    fc.assert(
      fc.property(
        barKg,
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (kg, moreKg, sooner) => {
          const possible = (barKg: number, perSecond = tiring.perSecond) =>
            repsPossible({ ...load, barKg }, lifter, { ...tiring, perSecond });
          expect(possible(kg + moreKg)).toBeLessThanOrEqual(possible(kg));
          expect(possible(kg, sooner * tiring.perSecond)).toBeLessThanOrEqual(possible(kg));
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('a session', () => {
  it('is never worse for a longer rest', () => {
    fc.assert(
      fc.property(barKg, restS, fc.integer({ min: 1, max: 200 }), (kg, rest, longer) => {
        const short = session(kg, 4, 4, rest);
        const long = session(kg, 4, 4, rest + longer);
        expect(long.marginLn).toBeGreaterThanOrEqual(short.marginLn - 1e-3);
        if (short.lastMps !== null) expect(long.lastMps).toBeGreaterThanOrEqual(short.lastMps - 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  it('has just so much strength to spare as its margin says', () => {
    fc.assert(
      fc.property(barKg, restS, (kg, rest) => {
        const { marginLn } = session(kg, 3, 4, rest);
        fc.pre(Math.abs(marginLn) < 1);
        const madeWhen = (lifterLn: number) => {
          const other = { ...lifter, strengthN: lifter.strengthN * Math.exp(lifterLn) };
          const table = repTable(compileLoad({ ...load, barKg: kg }), other, tiring.loweringS)!;
          return simulateSession([{ table, sets: 3, reps: 4, restS: rest }], tiring)[0]!.missed === null;
        };
        expect(madeWhen(-marginLn + 0.01)).toBe(true);
        expect(madeWhen(-marginLn - 0.01)).toBe(false);
      }),
      // Here the last rep of the first set lies a hair below what just makes it.
      { numRuns: 20, examples: [[123.8320742953588, 224]] },
    );
  });

  it('has a factor of seven to spare at most, or lacks it', () => {
    // e^2 = 7.39: beyond that nobody asks how far.
    const margin = (strengthN: number) =>
      lastBlock([{ table: tableOf(strengthN), sets: 1, reps: 1, restS: 60 }], tiring).marginLn;
    expect([margin(100), margin(60_000)]).toEqual([-2, 2]);
    // Of a single it is the surplus itself.
    expect(margin(4500)).toBeCloseTo(tableOf(4500).restedLn, 2);
  });

  it('works a rep out as made from nought on and as missed below, however near to nought', () => {
    fc.assert(
      fc.property(barKg, fc.double({ min: -1e-3, max: 1e-3, noNaN: true }), (kg, surplusLn) => {
        const table = repTable(compileLoad({ ...load, barKg: kg }), lifter, tiring.loweringS)!;
        const { made, stoppedAtS } = repAtSurplus(table, surplusLn);
        expect(made).toBe(surplusLn >= 0);
        expect(stoppedAtS === null).toBe(made);
      }),
      { numRuns: 40 },
    );
  });

  it('carries tiredness from block to block', () => {
    const table = repTable(compileLoad({ ...load, barKg: 140 }), lifter, tiring.loweringS)!;
    const block = { table, sets: 2, reps: 4, restS: 60 };
    const [alone] = simulateSession([block], tiring);
    const [, second] = simulateSession([block, block], tiring);
    expect(second!.firstMps).toBeLessThan(alone!.firstMps);
    expect(second!.marginLn).toBeLessThan(alone!.marginLn);
  });

  it('ends a block at its first miss: nobody goes on with a bar that did not go up', () => {
    // Four sets of more reps than there are in the first.
    const possible = repsPossible({ ...load, barKg: 150 }, lifter, tiring);
    expect(session(150, 4, possible + 1, 600).missed).toMatchObject({ set: 1, rep: possible + 1 });
  });

  it('counts ways up and down of its first set as time under the bar, 1.2 s for each way down', () => {
    const { durationS } = simulateRep({ ...load, barKg: 120 }, lifter);
    expect(session(120, 3, 1, 60).underStrainS).toBeCloseTo(durationS + 1.2, 2);
  });

  it('means its first set over the reps, each as simulated alone, and corrects it by the mean of what each has to spare', () => {
    const table = repTable(compileLoad({ ...load, barKg: 120 }), lifter, tiring.loweringS)!;
    const block = { table, sets: 2, reps: 5, restS: 60 };
    const reps = simulateSet(table, 5, tiring);
    const mean = reps.reduce((sum, { meanSpeedMps }) => sum + meanSpeedMps, 0) / 5;
    expect(lastBlock([block], tiring).setMps).toBeCloseTo(mean, 3);
    expect(lastBlock([{ ...block, reps: 1 }], tiring).setMps).toBe(lastBlock([block], tiring).firstMps);
    const faster = lastBlock([block], tiring, { offsetMps: 0.1, perSurplusMps: 0.2, upToLn: 2 });
    const spareLn = table.restedLn - reps[3]!.after.fastLn - reps[3]!.after.slowLn;
    // Each rep takes about alike: the mean of what is to spare is halfway from the first rep to the fifth.
    expect(faster.setMps! - mean).toBeCloseTo(0.1 + 0.2 * ((table.restedLn + spareLn) / 2), 2);
    expect(lastBlock([{ ...block, reps: 60 }], tiring).setMps).toBeNull();
  });

  it('never expects a later rep or a whole set faster than its first rep, however a correction falls', () => {
    const table = repTable(compileLoad({ ...load, barKg: 120 }), lifter, tiring.loweringS)!;
    const block = { table, sets: 2, reps: 5, restS: 60 };
    const { firstMps, setMps, lastMps } = lastBlock([block], tiring, {
      offsetMps: 0.5,
      perSurplusMps: -5,
      upToLn: 2,
    });
    expect([setMps, lastMps]).toEqual([firstMps, firstMps]);
  });
});
