import type { DayPlan, PlanGroup } from '#contract/day/dayPlan.ts';
import type { PlanWords } from '#contract/day/planWords.ts';
import { onOneLine, placeNotes } from '#contract/paper/placeNotes.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';

/** What stands beside the figures of a plan: as it was kept with them; a plan of before it was kept has it as the club has it now. */
export function wordsOf(plan: DayPlan, records: ClubRecords): PlanWords {
  const day = records.day.find(({ id }) => id === plan.dayId);
  return plan.words ?? wordsNow(records, day, plan.groups);
}

/** What would stand there if the plan were made now. */
export function wordsNow(
  records: ClubRecords,
  day: Day | undefined,
  groups: readonly PlanGroup[],
): PlanWords {
  const [club] = records.club;
  const ids = namedIn(groups);
  const named = (list: readonly { id: string; label: string }[]) =>
    list.flatMap(({ id, label }) => (ids.has(id) ? [{ id, label }] : []));
  return {
    club: club?.name ?? '',
    invented: club?.invented ?? false,
    timeZone: club?.timeZone ?? 'UTC',
    wallStepKg: club?.wallStepKg ?? null,
    title: onOneLine(day?.title ?? ''),
    note: onOneLine(day?.note ?? ''),
    notes: placeNotes(day),
    rackIds: records.rack.map(({ id }) => id),
    discs: records.disc.map(({ faceMassKg, diameterM, thicknessM }) => ({
      faceMassKg,
      diameterM,
      thicknessM,
    })),
    gear: {
      bandPair: named(records.bandPair),
      anchor: named(records.anchor),
      chainPair: named(records.chainPair),
      bar: named(records.bar),
      collarPair: named(records.collarPair),
      box: named(records.box),
      rack: named(records.rack),
    },
  };
}

/** Whatever stands in a caution as text; the ids of gear are among it. */
function namedIn(groups: readonly PlanGroup[]): ReadonlySet<unknown> {
  const said = groups.flatMap(({ cautions, places }) => [
    cautions,
    ...places.map(({ solved }) => [
      solved?.cautions,
      solved?.blocks.map(({ explanation }) => explanation.cautions),
    ]),
  ]);
  const found = new Set<unknown>();
  JSON.stringify(said, (_, value: unknown) => {
    found.add(value);
    return value;
  });
  return found;
}
