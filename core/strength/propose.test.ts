import { expect, it } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { estimateStrength, liftModelOf } from './estimateStrength.ts';
import { populationPrior } from './parameters.ts';
import { propose } from './propose.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
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
