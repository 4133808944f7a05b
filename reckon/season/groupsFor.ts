import type { Start } from '#contract/records/lift.ts';
import type { StartAsked } from '#contract/records/method.ts';
import type { LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { GroupOfLifter, OwnBox, PlannedDay, PlannedGroup } from '#contract/season/seasonPlan.ts';

/** What of a lifter tells which groups of a plan are theirs, and from which start. */
export type WhoseGroups = Pick<LifterOfSeason, 'timesBodyMass' | 'ownBoxes'>;

/** The groups of a planned day as one lifter does them: of those that differ by strength, the strongest that this lifter reaches, each from the own box. */
export function groupsFor({ groups }: Pick<PlannedDay, 'groups'>, lifter: WhoseGroups): GroupOfLifter[] {
  // The levels of a group follow one another, the least strong first.
  return groups
    .filter((group, at) => {
      const next = groups[at + 1];
      return (
        reaches(lifter.timesBodyMass, group) &&
        !(next?.askedId === group.askedId && reaches(lifter.timesBodyMass, next))
      );
    })
    .map((group) => groupOf(group, lifter.ownBoxes ?? []));
}

/** A start as a lifter with these boxes does it. */
export function startFor(start: StartAsked, ownBoxes: readonly OwnBox[]): Start {
  return start.way === 'ownBox' ? onBox(boxFor(start, ownBoxes)) : start;
}

/** Whether a lifter is strong enough for a group, or a level of one. */
export function reaches(
  timesBodyMass: LifterOfSeason['timesBodyMass'],
  { lift, leastTimesBodyMass }: Pick<PlannedGroup, 'lift' | 'leastTimesBodyMass'>,
): boolean {
  return (leastTimesBodyMass ?? 0) <= (timesBodyMass[lift] ?? 0);
}

/** Groups of a plan never change, and lifters on one box share one, so that it is held against others and written once. */
const known = new WeakMap<PlannedGroup, Map<string, GroupOfLifter>>();

function groupOf(group: PlannedGroup, ownBoxes: readonly OwnBox[]): GroupOfLifter {
  const { start } = group;
  if (start.way !== 'ownBox') return group as GroupOfLifter;
  const ownBox = boxFor(start, ownBoxes);
  const key = JSON.stringify(ownBox);
  const ofGroup = known.get(group) ?? new Map<string, GroupOfLifter>();
  known.set(group, ofGroup);
  const made = ofGroup.get(key) ?? { ...group, start: onBox(ownBox), ownBox };
  ofGroup.set(key, made);
  return made;
}

function boxFor(
  { aboveParallelM }: Extract<StartAsked, { way: 'ownBox' }>,
  ownBoxes: readonly OwnBox[],
): OwnBox {
  const own = ownBoxes.find((one) => one.aboveParallelM === aboveParallelM);
  if (own === undefined) throw new Error(`No box was found for a depth of ${aboveParallelM} m.`);
  return own;
}

function onBox({ heightM }: OwnBox): Start {
  return { way: 'box', heightM };
}
