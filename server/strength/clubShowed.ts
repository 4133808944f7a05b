import { type Lift, lift as liftShape } from '#contract/records/lift.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import { clubPriors, type ToldOfLift } from '#reckon/strength/clubPriors.ts';

/** What the club's logs told when it was learned from them what to expect of each lifter. */
export interface ClubShowed {
  /** The day on which that was learned. */
  on: string;
  /** Tells one state of all the logs and records that it was learned from from another. */
  from: string;
  lifters: Pick<Lifter, 'id' | 'statureM'>[];
  told: ToldOfLift[];
}

/** What to believe of a lifter in a lift before their log; the mark is the same as long as that is. */
export interface Expected {
  prior: Prior;
  mark: string;
}

/** By what the club showed, or without it as in the population. */
export function expectedOf(showed: ClubShowed | undefined): (lifterId: string, lift: Lift) => Expected {
  const priors = new Map(
    liftShape.options.map((lift) => [
      lift,
      showed ? clubPriors({ lifter: showed.lifters }, showed.told, lift) : () => populationPrior(lift),
    ]),
  );
  const known = new Map<string, Expected>();
  return (lifterId, lift) => {
    const key = `${lifterId} ${lift}`;
    const found = known.get(key);
    if (found) return found;
    const prior = priors.get(lift)!(lifterId);
    const expected = { prior, mark: fingerprint(prior) };
    known.set(key, expected);
    return expected;
  };
}
