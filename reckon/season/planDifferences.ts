import { isSame } from '#contract/changes/mergeFields.ts';
import type { ClubSeason, LifterOfSeason } from '#contract/season/clubSeason.ts';
import type {
  DayDifference,
  DifferenceReason,
  GroupDifference,
  LifterDifference,
  WeekDifference,
} from '#contract/season/planDifferences.ts';
import type { PlannedDay, PlannedGroup, PlannedWeek } from '#contract/season/seasonPlan.ts';
import { differenceReasons, ofClasses, ofEquipment, ofSeason } from './differenceReasons.ts';
import { groupsFor } from './groupsFor.ts';
import { planOf, type Side } from './Side.ts';

/** How a season as it is worked out now differs from a plan that was taken, lifter by lifter, from a day on. */
export function planDifferences(taken: ClubSeason, now: ClubSeason, from: string): LifterDifference[] {
  const before = new Map(taken.lifters.map((lifter) => [lifter.lifterId, lifter]));
  const stays = new Set(now.lifters.map(({ lifterId }) => lifterId));
  const ofAll = ofSeason(taken, now);
  const fieldsOf = fieldsOfPairs();
  const gone = taken.lifters.filter(({ lifterId }) => !stays.has(lifterId));
  return [
    ...now.lifters.flatMap((lifter) => {
      const was = before.get(lifter.lifterId);
      return was
        ? changed({ season: taken, lifter: was }, { season: now, lifter }, { from, ofAll, fieldsOf })
        : whole(lifter, 'new');
    }),
    ...gone.flatMap((lifter) => whole(lifter, 'gone')),
  ];
}

function whole({ lifterId }: LifterOfSeason, what: 'new' | 'gone'): LifterDifference[] {
  return [{ lifterId, what, why: [], weeks: [] }];
}

function changed(
  before: Side,
  now: Side,
  { from, ofAll, fieldsOf }: { from: string; ofAll: readonly DifferenceReason[]; fieldsOf: FieldsOf },
): LifterDifference[] {
  const weeks = weekDifferences(before, now, from, fieldsOf);
  // Other equipment leaves the shares as they are and changes every bar; another class changes none and is told all the same.
  const beside = [...ofEquipment(before, now), ...ofClasses(before, now, from)];
  if (weeks.length === 0 && beside.length === 0) return [];
  const why = [...ofAll, ...differenceReasons(before, now, from)];
  return [{ lifterId: now.lifter.lifterId, what: 'changed', why, weeks }];
}

function weekDifferences(before: Side, now: Side, from: string, fieldsOf: FieldsOf): WeekDifference[] {
  const [was, is] = [weeksOf(before), weeksOf(now)];
  const hasSameLevels = isSame(before.lifter.timesBodyMass, now.lifter.timesBodyMass);
  const mondays = [...new Set([...was.keys(), ...is.keys()])].toSorted();
  return mondays.flatMap((monday): WeekDifference[] => {
    const [a, b] = [was.get(monday), is.get(monday)];
    const [phaseBefore, phaseNow] = [phaseTitle(before.season, a), phaseTitle(now.season, b)];
    // Most weeks are as they were; their text is held against the other faster than their parts.
    if (hasSameLevels && phaseBefore === phaseNow && a && b && textOfWeek(a) === textOfWeek(b)) return [];
    const days = dayDifferences(daysOf(a, before, from), daysOf(b, now, from), fieldsOf);
    const isAhead = monday >= from || (b ?? a)!.days.some(({ date }) => date >= from);
    const phase = phaseBefore === phaseNow || !isAhead ? null : { before: phaseBefore, now: phaseNow };
    return days.length === 0 && phase === null ? [] : [{ monday, phase, days }];
  });
}

/** Weeks and groups are never changed once they are planned, and many weeks have the same groups: each is written once. */
const texts = new WeakMap<PlannedWeek | PlannedGroup, string>();

/** All of a week that its days can differ in. */
function textOfWeek(week: PlannedWeek): string {
  return textOf(week, ({ days }) =>
    days
      .map(({ date, closed, groups }) => `${date} ${closed} ${groups.map(textOfGroup).join(' ')}`)
      .join(' '),
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

function weeksOf(side: Side): Map<string, PlannedWeek> {
  return new Map((planOf(side)?.weeks ?? []).map((week) => [week.monday, week]));
}

function phaseTitle({ method }: ClubSeason, week: PlannedWeek | undefined): string | null {
  return method.phases.find(({ id }) => id === week?.phaseId)?.title ?? null;
}

type Day = Pick<PlannedDay, 'date' | 'title' | 'groups'>;

/** The days of a week on which this lifter trains, with their own groups. */
function daysOf(week: PlannedWeek | undefined, { lifter }: Side, from: string): Day[] {
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
  const known = new Map<string, Map<string, GroupDifference['in']>>();
  return (a, b) => {
    const [was, is] = [textOfGroup(a), textOfGroup(b)];
    if (was === is) return [];
    const against = known.get(was) ?? new Map<string, GroupDifference['in']>();
    known.set(was, against);
    const fields = against.get(is) ?? fieldsThatDiffer(a, b);
    against.set(is, fields);
    return fields;
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
