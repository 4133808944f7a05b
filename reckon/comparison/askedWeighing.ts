import type { z } from 'zod';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { weighComparisonOperation } from '#contract/compute/weighComparisonOperation.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import { baselineDays } from '#contract/records/outcome.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { clubTests, type TestRecords } from './clubTests.ts';
import type { LookedAt } from './lookedAt.ts';

type WeighingAsked = z.input<typeof weighComparisonOperation.inputSchema>;

/**
 * A drawn comparison with the club's records since as what `weigh-comparison` is asked. `takenOutOn`: from which day on nothing of a
 * lifter counts; who left the club was taken out then.
 */
export async function askedWeighing(
  records: TestRecords,
  sets: Long<LoggedSet>,
  estimates: readonly StrengthEstimate[],
  plan: Pick<ComparisonPlan, 'ways' | 'startsOn' | 'endsOn' | 'weeks' | 'drawn'>,
  of: LookedAt,
  takenOutOn: ReadonlyMap<string, string>,
): Promise<WeighingAsked> {
  const { ways, startsOn, weeks, endsOn } = plan;
  const earliest = dateOfDay(dayNumber(startsOn) - baselineDays[of.outcome]);
  const leftOn = new Map(records.lifter.map((one) => [one.id, one.leftOn]));
  const drawn = new Set(plan.drawn.map(({ lifterId }) => lifterId));
  return {
    outcome: of.outcome,
    ways,
    startsOn,
    weeks,
    drawn: plan.drawn.map((one) => ({
      ...one,
      takenOutOn: earlier(takenOutOn.get(one.lifterId) ?? null, leftOn.get(one.lifterId) ?? null),
    })),
    tests: (await clubTests(records, sets, estimates, of)).filter(
      ({ lifterId, on }) => drawn.has(lifterId) && on >= earliest && on <= endsOn,
    ),
  };
}

function earlier(one: string | null, other: string | null): string | null {
  if (one === null || other === null) return one ?? other;
  return one < other ? one : other;
}
