import { describe, expect, it } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { estimateStrength, liftModelOf } from './estimateStrength.ts';
import { kalmanPass } from './kalmanPass.ts';
import { type Parameters, populationPrior } from './parameters.ts';
import { propose } from './propose.ts';
import type { Rigging } from './Rigging.ts';
import { readingsBeside } from './readingsBeside.ts';
import type { SetEvidence } from './SetEvidence.ts';
import type { EffortGroup, Session } from './sessions.ts';
import { alikeGroup, alikeSpeed } from './tests/alikeGroup.ts';
import { lift as alikeLift } from './tests/alikeShapes.ts';
import { plainSingle } from './tests/plainSingle.ts';

const range = { fromM: 0.9, toM: 1.46 };
const straight: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range };
const verticalAt = [
  { zM: range.fromM, forceN: 150 },
  { zM: range.toM, forceN: 450 },
];
const banded: Rigging = {
  ...straight,
  start: 'box',
  load: { ...straight.load, hungBands: [{ verticalAt, count: 1 }] },
};
const movedBodyKg = populationShape('squat').movedBodyShare * 90;
const set = (day: number, barKg: number, told: Partial<SetEvidence> = {}): SetEvidence => ({
  ...plainSingle,
  rigging: straight,
  movedBodyKg,
  ...told,
  day,
  barKg,
});
/** Ten weeks: heavy singles with their speeds, some in wraps or on the platform, fast doubles against bands, fives with reps left. */
const log = Array.from({ length: 20 }, (_, session) => {
  const day = Math.floor(3.5 * session);
  const wave = 2.5 * (session % 5);
  if (session % 4 === 0)
    return [170, 180, 190].map((kg, i) =>
      set(day, kg + wave, { meanSpeedsMps: [0.42 - 0.06 * i - 0.002 * wave], platform: session === 12 }),
    );
  if (session % 4 === 1)
    return Array.from({ length: 4 }, (__, i) =>
      set(day, 110 + wave, {
        rigging: banded,
        reps: 2,
        made: 2,
        meanSpeedsMps: [0.66 - 0.01 * i - 0.004 * wave, 0.63 - 0.01 * i - 0.004 * wave],
      }),
    );
  if (session % 4 === 2)
    return [200, 212].map((kg) => set(day, kg + wave, { equipment: 'wraps', made: kg + wave > 219 ? 0 : 1 }));
  return Array.from({ length: 3 }, () =>
    set(day, 147.5 + wave, { reps: 5, made: 5, repsInReserve: 3 - 0.2 * wave, restS: 150 }),
  );
}).flat();

it('looks for answers where the exact filter finds them, about as widely as they lie', () => {
  const lift = liftModelOf('squat', straight);
  const prior = populationPrior('squat');
  const question = {
    lift: 'squat' as const,
    reference: straight,
    bodyMassKg: 90,
    sets: log,
    onDay: 70,
    prior,
  };
  const { sessions, start, active, particles, effective } = estimateStrength(question);
  // Every parameter that such a log can tell of.
  expect(active).toHaveLength(15);
  const { mean, root } = propose(sessions, lift, prior, start, active).shape;
  active.forEach((name, i) => {
    const moment = (of: (value: number) => number) =>
      particles.reduce((sum, { weight, parameters }) => sum + weight * of(parameters[name]), 0);
    const exact = moment((value) => value);
    const sd = Math.sqrt(moment((value) => (value - exact) ** 2));
    const row = root.subarray(i * active.length, (i + 1) * active.length);
    // A week's change is told by so little that its peak lies far from its mean.
    const nearSds = name === 'lnWeekSd' ? 1.2 : 0.4;
    expect(Math.abs(mean[i]! - exact) / sd, name).toBeLessThan(nearSds);
    expect(Math.abs(Math.log(Math.hypot(...row) / sd)), name).toBeLessThan(Math.log(1.4));
  });
  expect(effective / particles.length).toBeGreaterThan(0.3);
});

describe('of what can be told in closed form', () => {
  const population = populationPrior('squat');
  const prior = { mean: { ...population.mean, speedSlope: 0 }, sd: population.sd };
  const start = { meanLn: Math.log(190), sdLn: 0.1 };
  const uneven = Array.from({ length: 8 }, (_, week) => on(7 * week, timed(week % 2 === 0 ? 180 : 205)));
  const passed = (sessions: Session[], changed: Partial<Parameters>) => {
    const around = { ...prior.mean, ...changed };
    const read = readingsBeside(alikeLift, around, []);
    return kalmanPass(sessions, alikeLift, prior, start, [], { around, read, dayLn: null });
  };

  it('looks for spreads from day to day and from week to week where the log is likeliest with the prior, and for neither where it is not asked', () => {
    for (const [name, grid] of [
      ['lnDaySd', 0.35],
      ['lnWeekSd', 0.5],
    ] as const) {
      // A log of no sets leaves what was believed.
      const silent = propose([on(0), on(30)], alikeLift, prior, start, [name]).shape;
      expect([silent.mean[0], silent.root[0]]).toEqual([0, grid].map((value) => expect.closeTo(value, 9)));
      // All values from -3 to 3 standard deviations of the prior, by their density.
      const z = Array.from({ length: 61 }, (_, i) => (i - 30) / 10);
      const ln = z.map((by) => passed(uneven, { [name]: by * grid }).lnEvidence - by ** 2 / 2);
      const weights = ln.map((one) => Math.exp(one - Math.max(...ln)));
      const sum = weights.reduce((total, one) => total + one, 0);
      const mean = weights.reduce((total, one, i) => total + one * z[i]!, 0) / sum;
      const sd = Math.sqrt(weights.reduce((total, one, i) => total + one * (z[i]! - mean) ** 2, 0) / sum);
      const { shape } = propose(uneven, alikeLift, prior, start, [name]);
      expect(Math.abs(shape.mean[0]! / grid - mean)).toBeLessThan(0.25 * sd);
      expect(Math.abs(Math.log(shape.root[0]! / grid / sd))).toBeLessThan(Math.log(1.25));
    }
    const { surprises } = propose(uneven, alikeLift, prior, start, []);
    expect(surprises).toEqual(passed(uneven, {}).surprises);
  });

  it('holds nothing of a parameter together with the spreads, and tries no place narrower than a fiftieth of the prior', () => {
    const log = uneven.map(({ day, groups }) => on(day, ...groups, timed(190, { equipment: 'wraps' })));
    const wide = { mean: prior.mean, sd: { ...prior.sd, wraps: 2 } };
    const { root } = propose(log, alikeLift, wide, start, ['lnDaySd', 'wraps']).shape;
    expect(root[3]).toBeCloseTo(0.04, 9);
    expect([root[1], root[2]]).toEqual([0, 0]);
  });

  it('goes no farther from what is usual than two and a half standard deviations', () => {
    // Wraps that seem to add 30 %, of which 6 (4) % was believed.
    const log = uneven.map(({ day, groups }) =>
      on(day, ...groups, timed(190 * 1.3, { equipment: 'wraps' }), timed(190 * 1.3, { equipment: 'wraps' })),
    );
    const { mean } = propose(log, alikeLift, prior, start, ['wraps']).shape;
    expect(mean[0]).toBeCloseTo(0.06 + 2.5 * 0.04, 9);
  });
});

function on(day: number, ...groups: EffortGroup[]): Session {
  return { day, groups };
}

/** A single of 150 kg as fast as somebody shows it who has this maximum. */
function timed(maxKg: number, told: Partial<EffortGroup> = {}): EffortGroup {
  return alikeGroup(150, { fastestMps: alikeSpeed(150, maxKg), ...told });
}
