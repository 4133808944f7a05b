import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { NearDay, NearWork } from '#contract/season/nearDay.ts';
import { wordsNow } from '#reckon/day/wordsOf.ts';
import type { DayAhead } from './nearDays.ts';

/** One lifter's part of a near day that was worked out, in the words of now; other proposals are for the Day screen. */
export function nearDayOf(
  records: ClubRecords,
  { day, noRack }: DayAhead,
  plan: DayPlan,
  lifterId: string,
): NearDay {
  const groups = plan.groups.map((group) => ({
    ...group,
    places: group.places.filter((place) => place.lifterId === lifterId),
  }));
  const works = groups.flatMap(({ groupId, title, lift, aim, places }): NearWork[] => {
    const askedId = day.groups.find(({ id }) => id === groupId)?.planned?.askedId;
    if (askedId === undefined) return [];
    return places.map((place) => ({
      askedId,
      title,
      lift,
      aim,
      place: { ...place, solved: place.solved && { ...place.solved, others: [] } },
    }));
  });
  return {
    date: day.date,
    gravityMps2: plan.gravityMps2,
    words: wordsNow(records, day, groups),
    works,
    noRack,
  };
}
