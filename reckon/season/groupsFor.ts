import type { LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { PlannedDay, PlannedGroup } from '#contract/season/seasonPlan.ts';

/** The groups of a planned day as one lifter does them: of those that differ by strength, the strongest that this lifter reaches. */
export function groupsFor(
  { groups }: Pick<PlannedDay, 'groups'>,
  { timesBodyMass }: Pick<LifterOfSeason, 'timesBodyMass'>,
): PlannedGroup[] {
  const reaches = ({ lift, leastTimesBodyMass }: PlannedGroup) =>
    (leastTimesBodyMass ?? 0) <= (timesBodyMass[lift] ?? 0);
  // The levels of a group follow one another, the least strong first.
  return groups.filter(
    (group, at) => reaches(group) && !(groups[at + 1]?.askedId === group.askedId && reaches(groups[at + 1]!)),
  );
}
