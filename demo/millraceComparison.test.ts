import { expect, test } from 'vitest';
import { ageOn } from '#contract/calendar/ageOn.ts';
import { planComparisonOperation } from '#contract/compute/planComparisonOperation.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { askedPlan } from '#reckon/comparison/askedPlan.ts';
import { millraceClub } from './millraceClub.ts';

const club = millraceClub('2026-11-25');
const { planDocument: kept, lift } = club.comparison[0]!;

test('the comparison of the invented club is what the program plans for those lifters and that seed', async () => {
  const asked = await askedPlan(club, [], [], {
    ways: kept.ways,
    startsOn: kept.startsOn,
    weeks: kept.weeks,
    seed: kept.seed,
    of: { outcome: 'strength', lift },
    lifterIds: kept.drawn.map(({ lifterId }) => lifterId),
    takenOutIds: [],
  });
  const plan = (await runOperation(planComparisonOperation, { ...asked, plays: 50 })) as ComparisonPlan;
  const { scatter, foretold, ...drawn } = plan;
  const { scatter: _scatter, foretold: _foretold, ...keptDraw } = kept;
  expect(drawn).toMatchObject(keptDraw);
  expect(scatter.gainSd_percentAWeek).toBeCloseTo(kept.scatter.gainSd_percentAWeek, 3);
  expect(foretold.outlook).toBe(kept.foretold.outlook);
  // Fifty plays against four hundred.
  expect(Math.abs(foretold.detectable_percent! - kept.foretold.detectable_percent!)).toBeLessThan(
    2 * foretold.error_percent!,
  );
});

test('nobody in it is a minor', () => {
  for (const { lifterId } of kept.drawn)
    expect(
      ageOn(club.lifter.find(({ id }) => id === lifterId)!.bornOn!, kept.startsOn),
    ).toBeGreaterThanOrEqual(18);
});
