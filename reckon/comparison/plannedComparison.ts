import type { ComparisonWish } from '#contract/comparison/comparisonWish.ts';
import { planComparisonOperation } from '#contract/compute/planComparisonOperation.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { Tell } from '#contract/words/doing.ts';
import { noClock } from '#core/day/timeSpent.ts';
import { askedPlan } from './askedPlan.ts';
import { lookedAt } from './lookedAt.ts';

/** A plan with what is said of it. */
export interface PlannedComparison {
  plan: ComparisonPlan;
  sentences: string[];
  cautions: string[];
}

/**
 * A comparison as the club's records and log plan it, drawn by this seed; `plays`: how often it is simulated; `tell` hears how far that is. `records` with the gear that the log
 * names. Throws an `InputError` where there are more lifters or tests than are taken.
 */
export async function plannedComparison(
  records: ClubRecords,
  log: Long<LoggedSet>,
  estimates: readonly StrengthEstimate[],
  { outcome, lift, family, ...wish }: ComparisonWish,
  seed: number,
  plays: number,
  tell: Tell = () => {},
): Promise<PlannedComparison> {
  const of = lookedAt({ outcome, lift, family });
  const asked = await askedPlan(records, log, estimates, { ...wish, of, seed, takenOutIds: [] });
  const answer = await runOperation(planComparisonOperation, { ...asked, plays }, noClock, tell);
  const { sentences, cautions, ...plan } = planComparisonOperation.outputSchema.parse(answer);
  return { plan, sentences, cautions };
}
