import type { Lift, Setup } from '#contract/records/lift.ts';
import type { BodyMass } from '#contract/records/lifters.ts';
import { liftWord } from './liftWords.ts';
import type { UsualMass } from './massQuestion.ts';

/** Something on record that a lifter lifted: a best, or a set of which a rep was made. */
interface Lifted {
  lift: Lift;
  setup: Pick<Setup, 'barKg'>;
}

/** More than this beside the heaviest of a lift nobody adds unseen; from one lift to another more is usual (judgement). */
const MOST_TIMES = { ofLift: 1.5, ofAny: 2.5 };
/** A best below this share of the heaviest is no best; bands and a low box leave more on the bar (judgement). */
const LEAST_OF_BEST = 0.4;
/** From one weighing to the next nobody gains or loses more unseen (judgement). */
const MOST_BODY_TIMES = 1.25;

/**
 * What a bar is held against: the heaviest of its lift on record, or of any lift where there is none of it; null where nothing is
 * on record. Bars that are no bests may be as light as one likes.
 */
export function usualBar(lifted: readonly Lifted[], lift: Lift, isBest: boolean): UsualMass | null {
  const heaviest = (of: readonly Lifted[]) => Math.max(0, ...of.map(({ setup }) => setup.barKg));
  const ofLiftKg = heaviest(lifted.filter((one) => one.lift === lift));
  if (ofLiftKg > 0) {
    return {
      called: `the heaviest ${liftWord(lift)} on record`,
      massKg: ofLiftKg,
      mostTimes: MOST_TIMES.ofLift,
      leastShare: isBest ? LEAST_OF_BEST : 0,
    };
  }
  const anyKg = heaviest(lifted);
  if (anyKg === 0) return null;
  return {
    called: 'the heaviest bar on record',
    massKg: anyKg,
    mostTimes: MOST_TIMES.ofAny,
    leastShare: 0,
  };
}

/** What a weighing is held against: the one nearest to its day; null where there is none. */
export function usualBodyMass(
  weighings: readonly Pick<BodyMass, 'takenOn' | 'massKg'>[],
  takenOn: string,
  dateText: (date: string) => string,
): UsualMass | null {
  const away = (date: string) => Math.abs(Date.parse(date) - Date.parse(takenOn));
  const [nearest] = weighings.toSorted((a, b) => away(a.takenOn) - away(b.takenOn));
  if (nearest === undefined) return null;
  return {
    called: `the body mass weighed on ${dateText(nearest.takenOn)}`,
    massKg: nearest.massKg,
    mostTimes: MOST_BODY_TIMES,
    leastShare: 1 / MOST_BODY_TIMES,
  };
}
