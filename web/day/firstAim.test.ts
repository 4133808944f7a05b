import { expect, test } from 'vitest';
import { solveDay } from '#contract/assemble/solveDay.ts';
import { millraceClub } from '../../demo/millraceClub.ts';
import { aimToBegin, firstAim } from './firstAim.ts';

const records = millraceClub('2026-11-28');

test('the first share of capability is what the percentages of the trade make of the squats of the demo', () => {
  const day = structuredClone(records.day.find(({ id }) => id === 'day-speed-squat')!);
  // The middle of 50 to 60 % on the bar with 25 % in bands at lockout: common practice, no source.
  day.groups[0]!.aim = {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.55 },
      { basis: 'lockout', share: 0.8 },
    ],
  };
  const [aim, ofPlan] = [firstAim.capability, aimToBegin('capability', solveDay(records, day).groups[0]!)];
  if (aim.by !== 'capability' || ofPlan.by !== 'capability') throw new Error('a capability aim');
  expect(Math.abs(ofPlan.bottomShare - aim.bottomShare)).toBeLessThan(0.05);
  expect(Math.abs(ofPlan.lockoutShare - aim.lockoutShare)).toBeLessThan(0.05);
});

/** Shares that run straight up to 0.85, and what lies above does not count. */
const straight = (bottom: number, lockout: number) => ({
  solved: {
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
