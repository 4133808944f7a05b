import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCurve } from '#core/load/loadCurve.ts';
import { simulateRep } from '#core/rep/simulateRep.ts';
import { shareOfCapability } from '#core/rep/strengthCurve.ts';
import type { Aim } from './Aim.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { RackGear } from './Gear.ts';
import { gearLoad } from './gearLoad.ts';
import type { LifterTask } from './misfit.ts';
import { loadableMasses } from './plates.ts';
import { rankSetups } from './rankSetups.ts';

// The starting values of a parallel squat in docs/model.md; strength for a maximum of some 300 kg.
const capability = {
  strengthN: 3600,
  slope: 1.2,
  curvature: -0.5,
  dip: { depth: 0.2, at: 0.4, width: 0.2 },
  maxSpeedMps: 1.6,
  rebound: 0.35,
  reboundTimeS: 0.7,
  strainAfterS: 2.5,
  strainTimeS: 6,
  buildUpTimeS: 0,
  builtShare: 0,
  easing: 0,
  movedBodyKg: 88,
  range: { fromM: 0.9, toM: 1.5 },
};
const travel = { bottomM: 0.92, lockoutM: 1.5, gravityMps2: 9.80665, path: [] };

const pairs = fc.array(
  fc.record({
    slackM: fc.double({ min: 0.5, max: 1.2, noNaN: true }),
    stiffnessNpm: fc.double({ min: 100, max: 1500, noNaN: true }),
  }),
  { maxLength: 3 },
);
const gears = pairs.map(
  (bands): RackGear => ({
    barKg: 20,
    collarsKg: 0,
    discs: [
      { massKg: 20, pairs: 4 },
      { massKg: 10, pairs: 1 },
      { massKg: 5, pairs: 1 },
    ],
    chains: [
      {
        chainPairId: 'c',
        chain: { massPerMetreKg: 8, lengthM: 1.6, attachBelowBarM: 0, count: 2 },
        pairs: 1,
      },
    ],
    hookups: bands.map(({ slackM, stiffnessNpm }, i) => ({
      pairId: `p${i}`,
      hookupId: 'h',
      anchorId: 'a',
      ratedLoadN: null,
      rigged: [],
      measured: {
        count: 1,
        verticalAt: [
          { zM: slackM, forceN: 0 },
          { zM: slackM + 1, forceN: stiffnessNpm },
        ],
      },
    })),
  }),
);
const shares = fc.double({ min: 0.3, max: 1, noNaN: true });
const bases = fc.constantFrom('bar', 'bottom', 'lockout', 'mean');
const aims: fc.Arbitrary<Aim> = fc.oneof(
  fc.record({ by: fc.constant('capability'), bottomShare: shares, lockoutShare: shares }),
  fc.record({
    by: fc.constant('percent'),
    targets: fc.array(fc.record({ basis: bases, share: shares }), { minLength: 1, maxLength: 3 }),
  }),
  fc
    .record({
      by: fc.constant('speed'),
      fromMps: fc.double({ min: 0.3, max: 0.8, noNaN: true }),
      width: fc.constantFrom(0, 0.05, 0.2),
    })
    .map(({ by, fromMps, width }) => ({ by, fromMps, toMps: fromMps + width })),
);

const rms = (values: number[]) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

/** The misfit as its definition says, straight from load curve and simulated rep: the independent reference. */
function misfitByDefinition(
  gear: RackGear,
  set: Parameters<typeof gearLoad>[1],
  barKg: number,
  { aim, referenceKg }: LifterTask,
): number {
  const load = gearLoad(gear, set, travel, barKg);
  const curve = loadCurve(load, 21);
  const matters = curve.points.slice(0, 18);
  const share = matters.map((p) => shareOfCapability(p.totalN, capability, p.zM, 9.80665));
  if (aim.by === 'capability') {
    return rms(
      share.map((value, i) => value - (aim.bottomShare * (1 - i / 20) + (aim.lockoutShare * i) / 20)),
    );
  }
  if (aim.by === 'percent') {
    const kg = {
      bar: barKg,
      bottom: curve.bottomN / 9.80665,
      lockout: curve.lockoutN / 9.80665,
      mean: curve.meanN / 9.80665,
    };
    return rms(aim.targets.map((target) => kg[target.basis] / referenceKg - target.share));
  }
  const mean = share.reduce((sum, value) => sum + value, 0) / share.length;
  const rep = simulateRep(load, capability);
  const speed = rep.made ? rep.meanSpeedMps : 0;
  const outside = speed < aim.fromMps ? aim.fromMps - speed : Math.max(0, speed - aim.toMps);
  return Math.hypot(outside / ((aim.fromMps + aim.toMps) / 2), rms(share.map((value) => value - mean)));
}

describe('rankSetups', () => {
  it('gives every set its best loadable bar and the sets in order, as trying everything does', () => {
    fc.assert(
      fc.property(gears, aims, (gear, aim) => {
        const task = { capability, travel, aim, referenceKg: 300 };
        const ranking = rankSetups(task, gear);
        const bars = loadableMasses(gear);
        const byTrying = enumerateSetups(gear)
          .map((set) => Math.min(...bars.map((barKg) => misfitByDefinition(gear, set, barKg, task))))
          .sort((a, b) => a - b);
        for (const misfit of byTrying) {
          const score = ranking.next()!;
          expect(score.misfit).toBeCloseTo(misfit, aim.by === 'speed' ? 4 : 7);
          expect(misfitByDefinition(gear, ranking.sets[score.index]!, score.barKg, task)).toBeCloseTo(
            misfit,
            9,
          );
        }
        expect(ranking.next()).toBeNull();
      }),
      { numRuns: 60 },
    );
  });

  it('simulates only a few of the reps that trying everything would take', () => {
    const gear: RackGear = {
      ...fc.sample(gears, { numRuns: 1, seed: 7 })[0]!,
      chains: [],
      hookups: Array.from({ length: 12 }, (_, i) => ({
        pairId: `p${i}`,
        hookupId: 'h',
        anchorId: 'a',
        ratedLoadN: null,
        rigged: [],
        measured: {
          count: 1,
          verticalAt: [
            { zM: 0.8, forceN: 0 },
            { zM: 1.5, forceN: 60 * (i + 1) },
          ],
        },
      })),
    };
    const ranking = rankSetups(
      { capability, travel, aim: { by: 'speed', fromMps: 0.5, toMps: 0.6 }, referenceKg: 300 },
      gear,
    );
    for (let i = 0; i < 6; i++) ranking.next();
    expect(ranking.reps()).toBeLessThan(0.2 * ranking.sets.length * loadableMasses(gear).length);
  });
});
