import type { z } from 'zod';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { planComparisonOperation } from '#contract/compute/planComparisonOperation.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { holdsOn, type Lifter } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { bodyMassOf } from '#reckon/lifter/assembleCapability.ts';
import { clubTests, type TestRecords } from './clubTests.ts';
import type { LookedAt } from './lookedAt.ts';

type PlanAsked = z.input<typeof planComparisonOperation.inputSchema>;
type AskedLifter = PlanAsked['lifters'][number];

/** A comparison as the coach thinks of it. */
export interface AskedComparison extends Pick<PlanAsked, 'ways' | 'startsOn' | 'weeks' | 'seed'> {
  of: LookedAt;
  /** Whom the coach would let take part. */
  lifterIds: readonly string[];
  /** Who said no, or whom the coach takes out. */
  takenOutIds: readonly string[];
}

type PlanRecords = TestRecords & Pick<ClubRecords, 'bodyMass' | 'restriction'>;

/** The club's records as what `plan-comparison` is asked; the estimates are those known before the start. Who has left is not asked for. */
export async function askedPlan(
  records: PlanRecords,
  sets: Long<LoggedSet>,
  estimates: readonly StrengthEstimate[],
  { of, lifterIds, takenOutIds, ...wish }: AskedComparison,
): Promise<PlanAsked> {
  const { startsOn, weeks } = wish;
  const lookedBackTo = dateOfDay(dayNumber(startsOn) - 7 * weeks);
  const present = records.lifter.filter(
    ({ id, leftOn }) => lifterIds.includes(id) && (leftOn === null || leftOn > startsOn),
  );
  return {
    ...wish,
    outcome: of.outcome,
    lifters: present.map((one) => ({
      ...traitsOf(records, estimates, of, one, startsOn),
      takenOut: takenOutIds.includes(one.id),
    })),
    past: (await clubTests(records, sets, estimates, of)).filter(
      ({ on }) => on >= lookedBackTo && on <= startsOn,
    ),
  };
}

/** Sex and equipment are never mixed in a pair; what is not measured, or not learned from a log, counts as not known. */
function traitsOf(
  records: PlanRecords,
  estimates: readonly StrengthEstimate[],
  { lift }: LookedAt,
  { id, name, bornOn, category, equipment }: Lifter,
  startsOn: string,
): AskedLifter {
  const estimate = estimates.find((one) => one.lifterId === id && one.lift === lift);
  const gain = estimate?.parameters.find((one) => one.name === 'weekGain');
  const body = bodyMassOf(records, id, startsOn);
  return {
    lifterId: id,
    name,
    bornOn,
    group: `${category} ${equipment}`,
    max_kg: estimate && estimate.maxKg.median > 0 ? estimate.maxKg.median : null,
    bodyMass_kg: body.known === 'measured' ? body.massKg : null,
    gain_percentAWeek: gain ? 100 * gain.now.median : null,
    restricted: records.restriction.some(
      (one) => one.lifterId === id && one.lift === lift && holdsOn(one, startsOn),
    ),
  };
}
