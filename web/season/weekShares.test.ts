import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { planSeason } from '#reckon/season/planSeason.ts';
import { weekShares } from './weekShares.ts';

const plans = shippedMethods.map((method) =>
  planSeason(
    method,
    { from: '2027-01-04', meets: [{ title: 'Meet', date: '2027-07-10' }], closed: [], held: [] },
    9.81,
  ),
);
const anyWeek = fc
  .constantFrom(...plans)
  .chain(({ weeks }) => fc.constantFrom(...weeks.filter(({ days }) => days.length > 0)));

describe('what the lifts of a week come to', () => {
  it('bands are never more than all that is held, and the average never more than the heaviest', () => {
    fc.assert(
      fc.property(
        anyWeek,
        fc.constantFrom('squat' as const, 'bench' as const, 'deadlift' as const, null),
        (week, lift) => {
          const { lockoutShare, bandShare, peakShare } = weekShares(week, lift);
          if (lockoutShare === null || bandShare === null || peakShare === null) return;
          expect(bandShare).toBeGreaterThanOrEqual(0);
          expect(bandShare).toBeLessThanOrEqual(lockoutShare);
          expect(lockoutShare).toBeLessThanOrEqual(peakShare + 1e-9);
        },
      ),
    );
  });

  it('the lifts of the three lifts together are those of all', () => {
    fc.assert(
      fc.property(anyWeek, (week) => {
        const each = (['squat', 'bench', 'deadlift'] as const).map((lift) => weekShares(week, lift).lifts);
        expect(each.reduce((sum, lifts) => sum + lifts, 0)).toBe(weekShares(week, null).lifts);
      }),
    );
  });

  it('eight doubles at 50 % on the bar and 25 % in bands hold 75 %, a work-up set at 70 % of the bar 60 %', () => {
    const group = {
      ...plans[0]!.weeks.flatMap(({ days }) => days).find(({ groups }) => groups.length > 0)!.groups[0]!,
    };
    const day = (shareOfAim: number) => ({
      days: [
        {
          date: '2027-01-04',
          title: '',
          closed: null,
          accessories: [],
          sleds: [],
          holds: [],
          groups: [
            {
              ...group,
              lift: 'squat' as const,
              lockoutShare: 0.75,
              bandShare: 0.25,
              blocks: [{ sets: 8, reps: 2, restSeconds: 60, shareOfAim }],
            },
          ],
        },
      ],
    });
    expect(weekShares(day(1), 'squat')).toEqual({
      lifts: 16,
      lockoutShare: 0.75,
      bandShare: 0.25,
      peakShare: 0.75,
    });
    expect(weekShares(day(0.7), 'squat').peakShare).toBeCloseTo(0.7 * 0.5 + 0.25, 12);
    expect(weekShares(day(1), 'bench').lockoutShare).toBeNull();
  });
});
