import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { GearWarning } from '#contract/season/gearWarning.ts';
import { clubSeason } from './clubSeason.ts';
import { gearOverSeason } from './gearOverSeason.ts';
import { groupsFor } from './groupsFor.ts';

/** Where racks, bands and the hour do not do for all seasons of the club together, from a day on. */
export function gearAhead(records: ClubRecords, today: string): GearWarning[] {
  const lifters = records.season.flatMap(({ id }) => {
    const season = clubSeason(records, id, today);
    return season.lifters.flatMap((lifter) =>
      lifter.plan === null
        ? []
        : [
            {
              lifterId: lifter.lifterId,
              days: season.plans[lifter.plan]!.weeks.flatMap(({ days }) => days)
                .filter(({ date }) => date >= today)
                .map((day) => ({ date: day.date, groups: groupsFor(day, lifter) })),
            },
          ],
    );
  });
  return gearOverSeason(records, lifters);
}
