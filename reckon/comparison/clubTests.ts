import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { inRuns, type Long } from '#contract/records/long.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { HardLift } from '#reckon/evidence/HardLift.ts';
import { hardLiftsOf } from '#reckon/evidence/hardLifts.ts';
import { type MeanPull, meanPull } from '#reckon/evidence/meanPull.ts';
import { meetLifts } from '#reckon/evidence/meetLifts.ts';
import { variantOf } from '#reckon/evidence/variantOf.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import type { LookedAt } from './lookedAt.ts';

export type TestRecords = LoadRecords & Pick<ClubRecords, 'best' | 'lifter'>;

export interface ClubTest {
  lifterId: string;
  on: string;
  value_kg: number;
}

/**
 * Every test of one lift that the club's log and bests hold. A setup's load counts with the mean pull of bands and chains, as the gear was
 * that day. Of lifts in equipment only those in the lifter's own: another suit looks like a gain. The log in its order, a day at a time;
 * where the estimates are looked at it is not read.
 */
export async function clubTests(
  records: TestRecords,
  sets: Long<LoggedSet>,
  estimates: readonly StrengthEstimate[],
  of: LookedAt,
): Promise<ClubTest[]> {
  if (of.outcome === 'strength') return estimated(estimates, of.lift);
  const own = new Map(records.lifter.map(({ id, equipment }) => [id, equipment]));
  const isOwn = (one: Pick<HardLift, 'lifterId' | 'lift' | 'equipment'>) =>
    one.lift === of.lift && one.equipment === own.get(one.lifterId);
  if (of.outcome === 'platform') {
    const onPlatform: LoggedSet[] = [];
    for await (const set of sets) if (set.platform) onPlatform.push(set);
    return meetLifts(onPlatform, records.best)
      .filter(isOwn)
      .map(({ lifterId, doneOn, barKg }) => ({ lifterId, on: doneOn, value_kg: barKg }));
  }
  const { family } = of;
  const pull = meanPull(records);
  const hard = hardLiftsOf(records.best, pull);
  for await (const day of inRuns(sets, ({ doneOn }) => doneOn)) hard.take(day);
  const inFamily = hard.all().filter((one) => {
    const { way, hung } = variantOf(one, pull);
    return isOwn(one) && way === family.way && hung === family.hung;
  });
  return [...grouped(inFamily, ({ lifterId }) => lifterId).values()].flatMap((lifts) =>
    mostDone(lifts).flatMap((one) => loadOf(one, pull)),
  );
}

/** The middle of what is believed, week by week. */
function estimated(estimates: readonly StrengthEstimate[], lift: Lift): ClubTest[] {
  return estimates
    .filter((one) => one.lift === lift)
    .flatMap(({ lifterId, history }) =>
      history.flatMap(({ on, median }) => (median > 0 ? [{ lifterId, on, value_kg: median }] : [])),
    );
}

/** Of one lifter the lifts with the exact setup done on most days, the heaviest of each day. */
function mostDone(lifts: readonly HardLift[]): HardLift[] {
  const bySetup = [...grouped(lifts, ({ key }) => key).values()].map((alike) =>
    [...grouped(alike, ({ doneOn }) => doneOn).values()].map((day) =>
      day.reduce((a, b) => (b.barKg > a.barKg ? b : a)),
    ),
  );
  return bySetup.reduce((a, b) => (b.length > a.length ? b : a));
}

function loadOf(one: HardLift, pull: MeanPull): ClubTest[] {
  const hung = pull(one);
  const loadKg = hung === null ? 0 : one.barKg + hung.bandKg + hung.chainKg;
  return loadKg > 0 ? [{ lifterId: one.lifterId, on: one.doneOn, value_kg: loadKg }] : [];
}
