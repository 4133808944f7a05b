import { beforeAll, describe, expect, it, test } from 'vitest';
import type { PlanGroup } from '#contract/day/dayPlan.ts';
import type { Aim } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { solveDay } from '#reckon/day/solveDay.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
import { millraceLog } from '../../demo/history/millraceLog.ts';
import { millraceClub } from '../../demo/millraceClub.ts';
import { aimToBegin, firstAim, shareByBests } from './firstAim.ts';

const TODAY = '2026-11-28';

describe('the first share of capability', () => {
  const records = millraceClub(TODAY);
  const speedSquat = records.day.find(({ id }) => id === 'day-speed-squat')!;
  let estimates: StrengthEstimate[] = [];
  beforeAll(() => {
    const log = millraceLog(records, TODAY);
    estimates = speedSquat.groups[0]!.places.map(
      ({ lifterId }) =>
        estimateLift(records, log, { lifterId, lift: 'squat', on: TODAY }, populationPrior('squat'))!,
    );
  });
  const planBy = (aim: Aim, by: StrengthEstimate[]): PlanGroup => {
    const day = structuredClone(speedSquat);
    day.groups[0]!.aim = aim;
    return solveDay(records, day, by).groups[0]!;
  };

  it('is what the percentages of the trade make of the squats of the demo by their logs', () => {
    // 50 % on the bar with 25 % in bands at lockout: common practice, no source.
    const { percent, capability } = firstAim;
    expect(percent).toMatchObject({ targets: [{ share: 0.5 }, { share: 0.75 }] });
    const ofPlan = aimToBegin('capability', planBy(percent, estimates));
    if (capability.by !== 'capability' || ofPlan.by !== 'capability') throw new Error('a capability aim');
    expect(Math.abs(ofPlan.bottomShare - capability.bottomShare)).toBeLessThan(0.03);
    expect(Math.abs(ofPlan.lockoutShare - capability.lockoutShare)).toBeLessThan(0.03);
  });

  it('is another line by bests alone, with which all work is made too and the bands stay as usual', () => {
    const ofPlan = aimToBegin('capability', planBy(firstAim.percent, []));
    if (ofPlan.by !== 'capability') throw new Error('a capability aim');
    expect(Math.abs(ofPlan.bottomShare - shareByBests.bottomShare)).toBeLessThan(0.01);
    expect(Math.abs(ofPlan.lockoutShare - shareByBests.lockoutShare)).toBeLessThan(0.01);
    for (const { solved } of planBy({ by: 'capability', ...shareByBests }, []).places) {
      const { blocks, reference, set } = solved!;
      const { expected, explanation } = blocks.at(-1)!;
      const { lockout } = explanation;
      const hung = (lockout.totalN - lockout.barN) / (9.81 * reference.kg);
      // Two pairs, and bands of about 25 % at lockout, more for the lightest at a rack that shares them: common practice, no source.
      expect(set.bands.length).toBeLessThanOrEqual(2);
      expect(hung).toBeGreaterThan(0.24);
      expect(hung).toBeLessThan(0.4);
      expect(expected!.chanceAllReps).toBeGreaterThan(0.95);
    }
  });

  it.each([true, false])('gives bands and work that is made, by logs: %s', (byLogs) => {
    const { places } = planBy(firstAim.capability, byLogs ? estimates : []);
    for (const { solved } of places) {
      const { set, blocks, reference } = solved!;
      const { barKg, expected } = blocks.at(-1)!;
      expect(set.bands.length).toBeGreaterThan(0);
      // Speed work is done with bars of 40 to 60 % and bands: common practice, no source.
      expect(Math.abs(barKg / reference.kg - 0.5)).toBeLessThan(0.12);
      expect(expected!.chanceAllReps).toBeGreaterThan(0.85);
    }
  });
});

/** Shares that run straight up to 0.85, and what lies above does not count. */
const straight = (bottom: number, lockout: number, setCount: number | null = null) => ({
  solved: {
    strength: { setCount },
    blocks: [
      {
        explanation: {
          shares: [0, 0.4, 0.8, 0.9, 1].map((s) => ({
            s,
            zM: s,
            share: s > 0.85 ? 9 : bottom + (lockout - bottom) * s,
          })),
        },
      },
    ],
  },
});

test('where a plan is at hand its own shares begin, in the mean of its lifters', () => {
  const places = [straight(0.7, 0.4), straight(0.8, 0.46), { solved: null }];
  const plan = { places } as unknown as Parameters<typeof aimToBegin>[1];
  expect(aimToBegin('capability', plan)).toEqual({ by: 'capability', bottomShare: 0.75, lockoutShare: 0.43 });
  expect(aimToBegin('speed', plan)).toBe(firstAim.speed);
});

test('where the log of some was not read yet, those whose log was read say where the aim begins', () => {
  const places = [straight(0.82, 0.26), straight(0.75, 0.38, 40), straight(0.83, 0.27)];
  const plan = { places } as unknown as Parameters<typeof aimToBegin>[1];
  expect(aimToBegin('capability', plan)).toMatchObject({ bottomShare: 0.75, lockoutShare: 0.38 });
});
