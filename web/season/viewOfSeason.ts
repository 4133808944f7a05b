import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { nearUntil } from '#contract/season/nearUntil.ts';
import { planFor } from './planFor.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';

/** What the pages of a season show: its plans lifter by lifter, with what the club's records know of each, by name. */
export function viewOfSeason(club: ClubRecords, worked: ClubSeason, today: string): SeasonView {
  const { seasonId, title, method, plans } = worked;
  const planOf = planFor(plans);
  const lifters = worked.lifters.flatMap((one): LifterSeason[] => {
    const lifter = club.lifter.find(({ id }) => id === one.lifterId);
    if (lifter === undefined) return [];
    const plan = one.plan === null ? nothing : planOf(one.plan, one);
    return [
      {
        lifter,
        plan,
        ownBoxes: one.ownBoxes ?? [],
        warnings: [...plan.warnings, ...one.warnings],
        restrictions: club.restriction.filter(({ lifterId }) => lifterId === one.lifterId),
        byHandOn: one.plan === null ? [] : plans[one.plan]!.byHand.map(({ date }) => date),
      },
    ];
  });
  return {
    id: seasonId,
    title,
    method,
    today,
    nearUntil: nearUntil(club.club[0], method, today),
    lifters: lifters.toSorted((a, b) => a.lifter.name.localeCompare(b.lifter.name)),
  };
}

/** Of somebody who has no meet ahead. */
const nothing: LifterSeason['plan'] = { meets: [], weeks: [], warnings: [] };
