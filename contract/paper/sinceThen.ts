import type { DayPlan, PlanPlace } from '#contract/day/dayPlan.ts';
import type { PlanWords } from '#contract/day/planWords.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import { goneGear } from './goneGear.ts';
import { noteFor } from './placeNotes.ts';

/** What happened after a plan was made that its paper must own up to; null: said to every group, or to all lifters of a group. */
export interface SinceThen {
  groupId: string | null;
  lifterId: string | null;
  sentence: string;
}

/**
 * What its paper says is no longer what the club would write: titles, notes, names, the step of the wall. `kept` stands under the
 * plan's number and goes on to be printed; `now` is what would. What the loads rest on is no part of this.
 */
export function reworded(
  plan: Pick<DayPlan, 'groups'>,
  kept: PlanWords,
  now: PlanWords,
  day: Pick<Day, 'groups'>,
): SinceThen[] {
  const forAll = Object.entries(ofAll).flatMap(([field, sentence]) => {
    const name = field as keyof typeof ofAll;
    return kept[name] === now[name] ? [] : [{ groupId: null, lifterId: null, sentence }];
  });
  const ofGroups = plan.groups.flatMap(({ groupId, title, places }): SinceThen[] => {
    const group = day.groups.find(({ id }) => id === groupId);
    const renamed =
      group === undefined || group.title === title
        ? []
        : [{ groupId, lifterId: null, sentence: `The group ${title} has another name.` }];
    const noted = places.flatMap(({ lifterId, name }) =>
      noteFor(kept.notes, groupId, lifterId) === noteFor(now.notes, groupId, lifterId)
        ? []
        : [{ groupId, lifterId, sentence: `The note for ${name} was changed.` }],
    );
    return [...renamed, ...noted];
  });
  return [...forAll, ...ofGroups];
}

const ofAll = {
  note: 'The note for the sheet was changed.',
  title: 'The title of the day was changed.',
  wallStepKg: 'How bars are written on the wall was changed.',
  club: 'The club has another name.',
  invented: 'Whether the club is invented was changed.',
  timeZone: 'The club has another clock.',
} as const;

/** Gear that hangs by the plan and must not any more on that date, at each lifter whom it hangs for. */
export function goneSince(
  { groups, date }: Pick<DayPlan, 'groups' | 'date'>,
  gear: Pick<ClubRecords, 'bandPair' | 'chainPair'>,
): SinceThen[] {
  return groups.flatMap(({ groupId, places }) =>
    places.flatMap((place: PlanPlace) =>
      goneGear(place, date, gear).map((sentence) => ({ groupId, lifterId: place.lifterId, sentence })),
    ),
  );
}

/** As paper writes it, so that nobody takes it for a part of what stands under the number. */
export function sinceThen(sentence: string): string {
  return `Since this was worked out: ${sentence}`;
}
