import type { LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { PlannedDay, PlannedGroup } from '#contract/season/seasonPlan.ts';

/** The groups of a planned day as one lifter does them: of those that differ by strength, the strongest that this lifter reaches. */
export function groupsFor(
  { groups }: Pick<PlannedDay, 'groups'>,
  { timesBodyMass }: Pick<LifterOfSeason, 'timesBodyMass'>,
): PlannedGroup[] {
  // The levels of a group follow one another, the least strong first.
  return groups.filter((group, at) => {
    const next = groups[at + 1];
    return (
      reaches(timesBodyMass, group) && !(next?.askedId === group.askedId && reaches(timesBodyMass, next))
    );
  });
}

function reaches(
  timesBodyMass: LifterOfSeason['timesBodyMass'],
  { lift, leastTimesBodyMass }: PlannedGroup,
): boolean {
  return (leastTimesBodyMass ?? 0) <= (timesBodyMass[lift] ?? 0);
}
