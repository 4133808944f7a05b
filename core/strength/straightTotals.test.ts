import { expect, it } from 'vitest';
import type { StrengthPosterior } from './estimateStrength.ts';
import { populationPrior } from './parameters.ts';
import { FARTHEST_SURPLUS } from './response.ts';
import type { EffortGroup } from './sessions.ts';
import { straightTotalsOf } from './straightTotals.ts';
import { alikeModel, lift } from './tests/alikeShapes.ts';

/** Each rep takes 2 s of effort at 0.0128 a second (docs/model.md, "effort"), whatever is spare. */
const LOSS_LN = 2 * 0.0128;
const model = alikeModel('free', Math.log(150), 0.05, 0, 0, () => 2);
const nothing = { mean: 0, count: 0 };
const one = (mean: number) => ({ mean, count: 1 });
const single = {
  model,
  equipment: null,
  platform: false,
  made: 1,
  missed: false,
  fastestMps: nothing,
  peakMps: nothing,
  reserve: nothing,
  carriedLn: 0,
  members: [0],
};
const parameters = { ...populationPrior('squat').mean, speedSlope: 0, wraps: 0.06, platform: 0.01 };
const totalsOf = (...groups: Partial<EffortGroup>[]) =>
  straightTotalsOf({
    particles: [{ parameters, weight: 1 }],
    sessions: [{ day: 0, groups: groups.map((group) => ({ ...single, ...group })) }],
    lift,
  } as unknown as StrengthPosterior);
/** How far beyond its own 150 kg a set acted. */
const actedAt = (group: Partial<EffortGroup>) => {
  const [{ lnTotal, says }] = totalsOf(group) as [ReturnType<typeof totalsOf>[number]];
  return [lnTotal - Math.log(150), says];
};
const at = (ln: number) => expect.closeTo(ln, 6);

it('is at least what was made, less than what was missed, and near what speeds or reps left tell', () => {
  expect(actedAt({})).toEqual([at(0), 'atLeast']);
  expect(actedAt({ made: 4 })).toEqual([at(3 * LOSS_LN), 'atLeast']);
  expect(actedAt({ made: 2, missed: true })).toEqual([at(2 * LOSS_LN), 'lessThan']);
  expect(actedAt({ made: 0, missed: true, fastestMps: one(0.9) })).toEqual([at(0), 'lessThan']);
  // 0.3 m/s and the root of what is spare, peaks half as fast again.
  expect(actedAt({ fastestMps: one(0.8), peakMps: one(0.3) })).toEqual([at(0.25), 'near']);
  expect(actedAt({ peakMps: one(1.2), reserve: one(5) })).toEqual([at(0.25), 'near']);
  expect(actedAt({ fastestMps: one(0.1) })).toEqual([at(0), 'near']);
  expect(actedAt({ fastestMps: one(9) })).toEqual([at(FARTHEST_SURPLUS), 'near']);
  // The middle of what counts as five reps is half a rep beyond the fifth.
  expect(actedAt({ made: 3, reserve: one(2) })).toEqual([at(4.5 * LOSS_LN), 'near']);
});

it('counts what the sets before had left of tiredness, and takes off what wraps and the platform give', () => {
  expect(actedAt({ carriedLn: 0.03 })).toEqual([at(0.03), 'atLeast']);
  expect(actedAt({ equipment: 'wraps', platform: true })).toEqual([at(-0.07), 'atLeast']);
});

it('stands by the index of each set, and leaves a gap where one was left out', () => {
  const totals = totalsOf({ members: [0, 3] }, { made: 2, members: [2] });
  expect([0, 1, 2, 3].map((set) => totals[set]?.lnTotal)).toEqual([
    at(Math.log(150)),
    undefined,
    at(Math.log(150) + LOSS_LN),
    at(Math.log(150)),
  ]);
});
