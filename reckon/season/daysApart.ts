import { isSame } from '#contract/changes/mergeFields.ts';
import type { DayDifference, GroupDifference } from '#contract/season/planDifferences.ts';
import type { DayOfLifter, PlannedGroup, PlannedWeek } from '#contract/season/seasonPlan.ts';
import { groupsFor, reaches } from './groupsFor.ts';
import type { Side } from './Side.ts';

type Week = PlannedWeek | undefined;

/**
 * The days from a day on that a lifter's week differs in, before and now. Most lifters have the same two weeks, and most weeks the same two groups:
 * those who reach the same levels of strength and sit on the same boxes share what was found.
 */
export function daysApart(
  from: string,
): (before: Side, now: Side) => (was: Week, is: Week) => DayDifference[] {
  const fieldsOf = fieldsOfPairs();
  const ofAlike = oncePerTexts<ReturnType<typeof oncePerTexts<DayDifference[]>>>();
  return (before, now) => {
    const once = ofAlike([whatTellsGroups(before), whatTellsGroups(now)], oncePerTexts);
    return (was, is) =>
      once([textOfWeek(was), textOfWeek(is)], () =>
        dayDifferences(daysOf(was, before, from), daysOf(is, now, from), fieldsOf),
      );
  };
}

/** Gives what was made for the same two texts before, or makes it. */
function oncePerTexts<Made>() {
  const known = new Map<string, Map<string, Made>>();
  return ([a, b]: [a: string, b: string], make: () => Made): Made => {
    const ofFirst = known.get(a) ?? new Map<string, Made>();
    known.set(a, ofFirst);
    const made = ofFirst.get(b) ?? make();
    ofFirst.set(b, made);
    return made;
  };
}

/** All of a lifter that their groups of a plan go by: the levels that they reach, and the own boxes. */
function whatTellsGroups(side: Side): string {
  return JSON.stringify([levelsReached(side), side.lifter.ownBoxes]);
}

function levelsReached({ season: { method }, lifter: { timesBodyMass } }: Side): string {
  const groups = method.phases.flatMap(({ days }) => days.flatMap((day) => day.groups));
  return groups
    .flatMap(({ lift, aim }) => (aim.by === 'barAndBands' ? aim.levels.map((of) => ({ lift, ...of })) : []))
    .filter((level) => reaches(timesBodyMass, level))
    .map(({ lift, leastTimesBodyMass: least }) => `${lift} ${least}`)
    .join(' ');
}

/** Weeks and groups are never changed once they are planned: each is written once. */
const texts = new WeakMap<PlannedWeek | PlannedGroup, string>();

/** All of a week that is told of its days where they differ. */
function textOfWeek(week: Week): string {
  if (week === undefined) return '';
  return textOf(week, ({ days }) =>
    JSON.stringify(
      days.map(({ date, title, closed, groups }) => [date, title, closed, groups.map(textOfGroup)]),
    ),
  );
}

function textOfGroup(group: PlannedGroup): string {
  return textOf(group, JSON.stringify);
}

function textOf<Of extends PlannedWeek | PlannedGroup>(of: Of, write: (of: Of) => string): string {
  const known = texts.get(of);
  if (known !== undefined) return known;
  const text = write(of);
  texts.set(of, text);
  return text;
}

type Day = Pick<DayOfLifter, 'date' | 'title' | 'groups'>;

/** The days of a week on which this lifter trains, with their own groups. */
function daysOf(week: Week, { lifter }: Side, from: string): Day[] {
  return (week?.days ?? [])
    .filter(({ date, closed }) => date >= from && closed === null)
    .map((day) => ({ date: day.date, title: day.title, groups: groupsFor(day, lifter) }));
}

function dayDifferences(before: readonly Day[], now: readonly Day[], fieldsOf: FieldsOf): DayDifference[] {
  const dates = [...new Set([...before, ...now].map(({ date }) => date))].toSorted();
  return dates.flatMap((date): DayDifference[] => {
    const was = before.find((day) => day.date === date);
    const is = now.find((day) => day.date === date);
    if (!is) return [{ date, title: was!.title, what: 'gone', groups: [] }];
    if (!was) return [{ date, title: is.title, what: 'new', groups: [] }];
    const groups = groupDifferences(was.groups, is.groups, fieldsOf);
    return groups.length === 0 ? [] : [{ date, title: is.title, what: 'changed', groups }];
  });
}

function groupDifferences(
  before: readonly PlannedGroup[],
  now: readonly PlannedGroup[],
  fieldsOf: FieldsOf,
): GroupDifference[] {
  const asked = [...new Set([...before, ...now].map(({ askedId }) => askedId))];
  return asked.flatMap((askedId): GroupDifference[] => {
    const was = before.find((group) => group.askedId === askedId);
    const is = now.find((group) => group.askedId === askedId);
    const title = (is ?? was)!.title;
    if (!is) return [{ askedId, title, what: 'gone', in: [] }];
    if (!was) return [{ askedId, title, what: 'new', in: [] }];
    const fields = fieldsOf(was, is);
    return fields.length === 0 ? [] : [{ askedId, title, what: 'changed', in: fields }];
  });
}

type FieldsOf = typeof fieldsThatDiffer;

/** The fields that two groups differ in: many weeks of many lifters have the same two, which are held against each other once. */
function fieldsOfPairs(): FieldsOf {
  const once = oncePerTexts<GroupDifference['in']>();
  return (a, b) => {
    const [was, is] = [textOfGroup(a), textOfGroup(b)];
    return was === is ? [] : once([was, is], () => fieldsThatDiffer(a, b));
  };
}

function fieldsThatDiffer(a: PlannedGroup, b: PlannedGroup): GroupDifference['in'] {
  const differs: [GroupDifference['in'][number], boolean][] = [
    ['variant', !isSame(a.start, b.start) || a.lift !== b.lift],
    ['aim', !isSame(a.aim, b.aim)],
    ['steps', !isSame(a.blocks, b.blocks)],
    ['rest', !isSame([a.leastChance, a.bounds, a.work], [b.leastChance, b.bounds, b.work])],
  ];
  return differs.flatMap(([field, is]) => (is ? [field] : []));
}
