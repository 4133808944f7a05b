import type { Lift } from '#contract/records/lift.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { sdOfBelief } from '#core/strength/belief.ts';
import { builds, clubPrior, type LearnedShape } from '#core/strength/clubPrior.ts';
import { type ParameterName, type Prior, populationPrior } from '#core/strength/parameters.ts';

/** Never nought: what was learned is divided by its square. */
const LEAST_SD = 1e-9;
/** A lifter of unknown stature counts with the club's middle build. */
const ASSUMED_STATURE_M = 1.75;

/** What of an estimate others learn from. */
export type ToldOfLift = Pick<StrengthEstimate, 'lifterId' | 'lift' | 'bodyMassKg' | 'parameters'>;

/**
 * What to believe of each lifter before their own log, from what the club's other lifters showed in the same lift: other
 * lifters of alike build count more. `estimates` hold what each log told and under which prior.
 */
export function clubPriors(
  records: { lifter: readonly Pick<Lifter, 'id' | 'statureM'>[] },
  estimates: readonly ToldOfLift[],
  lift: Lift,
): (lifterId: string) => Prior {
  const population = populationPrior(lift);
  const ofLift = estimates.filter((estimate) => estimate.lift === lift);
  const statureM = new Map(records.lifter.map(({ id, statureM }) => [id, statureM]));
  const byBuild = builds(
    ofLift.map(({ lifterId, bodyMassKg }) => ({
      bodyMassKg,
      statureM: statureM.get(lifterId) ?? ASSUMED_STATURE_M,
    })),
  );
  const learned = ofLift.map(
    ({ parameters }, i): LearnedShape => ({
      build: byBuild[i]!,
      learned: parameters.map(({ name, now, before }) => ({
        name: name as ParameterName,
        mean: now.median,
        sd: Math.max(sdOfBelief(now), LEAST_SD),
        priorMean: before.median,
        priorSd: sdOfBelief(before),
      })),
    }),
  );
  return (lifterId) => {
    const own = ofLift.findIndex((estimate) => estimate.lifterId === lifterId);
    // What a lifter showed counts once, through their own log.
    const others = learned.filter((_, i) => i !== own);
    return clubPrior(others, population)(own < 0 ? 0 : byBuild[own]!);
  };
}
