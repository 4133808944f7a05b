import { groupSummary } from '#contract/paper/groupSummary.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import type { Day, Group } from '#contract/records/day.ts';
import { capital } from '#contract/words/capital.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { compareText } from '#core/numeric/compareText.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { type DayHistory, liftersOf, type Told } from './dayHistory.ts';

/** What of the club a calendar tells. */
export interface CalendarAsked {
  /** The first and the last date in it. */
  from: string;
  to: string;
  /** Only the days, and of them only the groups, in which this lifter has a place. */
  lifterId?: string | undefined;
}

/**
 * The club's training days and meets as entries of a calendar, by date. A day that was removed, or in which the asked lifter no longer has a
 * place, and a meet likewise, is cancelled rather than left out. No notes, no loads; names only where the club wants them there.
 */
export function calendarEntries(
  records: Pick<ClubRecords, 'day' | 'lifter' | 'meet' | 'seasonEntry'> & { club: [Club, ...Club[]] },
  history: DayHistory,
  asked: CalendarAsked,
): CalendarEntry[] {
  const { lifterId } = asked;
  const club = records.club[0];
  const names = club.namesInCalendar
    ? new Map(records.lifter.map(({ id, name }) => [id, firstName(name)]))
    : null;
  const standing = new Set<string>();
  const entries = records.day.flatMap((day) => {
    const groups = day.groups.filter((group) => lifterId === undefined || has(group, lifterId));
    if (lifterId !== undefined && groups.length === 0) return [];
    standing.add(day.id);
    const title = titleOf(day, groups);
    const description = groups.map((group) => groupLines(group, club, names)).join('\n');
    const told = { date: day.date, wholeDay: false, title, description, cancelled: false };
    return [entry(history, day.id, history.days.get(day.id), told)];
  });
  const now = new Map(records.day.map((day) => [day.id, day]));
  const gone = [...history.days].flatMap(([id, past]) => {
    if (standing.has(id) || (lifterId !== undefined && !past.lifterIds.has(lifterId))) return [];
    const { date, title } = now.get(id) ?? past.last;
    const told = { date, wholeDay: false, title: title || noTitle, description: '', cancelled: true };
    return [entry(history, id, past, told)];
  });
  return [...entries, ...gone, ...meetEntries(records, history, lifterId)]
    .filter(({ date }) => date >= asked.from && date <= asked.to)
    .toSorted((a, b) => compareText(a.date, b.date) || compareText(a.id, b.id));
}

/** What a day is called that has no title, and whose work is not known any more. */
const noTitle = 'Training';

/** A lifter as the gym calls them. */
export function firstName(name: string): string {
  return name.trim().split(/\s+/, 1)[0]!;
}

/** Meets, each a whole day: all of the club's, or those that one lifter trains for. */
function meetEntries(
  { meet: meets, seasonEntry }: Pick<ClubRecords, 'meet' | 'seasonEntry'>,
  history: DayHistory,
  lifterId: string | undefined,
): CalendarEntry[] {
  const goesTo = new Set(
    seasonEntry.filter((one) => one.lifterId === lifterId).flatMap(({ meetIds }) => meetIds),
  );
  const standing = meets.filter(({ id }) => lifterId === undefined || goesTo.has(id));
  const now = new Map(meets.map((meet) => [meet.id, meet]));
  const ids = new Set(standing.map(({ id }) => id));
  const gone = [...history.meets].flatMap(([id, { last, lifterIds }]) => {
    const meet = now.get(id) ?? last;
    const wasTheirs = lifterId === undefined || lifterIds.has(lifterId);
    return ids.has(id) || meet === null || !wasTheirs
      ? []
      : [{ id, date: meet.date, title: meet.title, cancelled: true }];
  });
  const there = standing.map(({ id, date, title }) => ({ id, date, title, cancelled: false }));
  return [...there, ...gone].map(({ id, date, title, cancelled }) =>
    // A day may have the same id: each kind counts its own.
    entry(history, `meet.${id}`, history.meets.get(id), {
      date,
      wholeDay: true,
      title,
      description: '',
      cancelled,
    }),
  );
}

function entry(
  { all }: DayHistory,
  id: string,
  past: Told | undefined,
  told: Pick<CalendarEntry, 'date' | 'wholeDay' | 'title' | 'description' | 'cancelled'>,
): CalendarEntry {
  const own = past ?? { changes: 0, changedAt: null };
  const moments = [own.changedAt, all.changedAt].filter((moment) => moment !== null).toSorted();
  // A log always tells how a day came about; that of a damaged file may not.
  return {
    id,
    ...told,
    sequence: own.changes + all.changes,
    changedAt: moments.at(-1) ?? `${told.date}T00:00:00.000Z`,
  };
}

function titleOf({ title }: Day, groups: readonly Group[]): string {
  if (title.trim() !== '') return title;
  const lifts = [...new Set(groups.map(({ lift }) => liftWord(lift)))];
  return lifts.length === 0 ? noTitle : capital(inARow(lifts));
}

/** One group: what is done, and who does it. */
function groupLines(group: Group, { lengthUnit }: Club, names: ReadonlyMap<string, string> | null): string {
  const work = `${group.title}: ${groupSummary(group, lengthUnit)}`;
  const there = names ? liftersOf({ groups: [group] }).flatMap((id) => names.get(id) ?? []) : [];
  return there.length === 0 ? work : `${work}\nWith ${inARow(there)}.`;
}

function has({ places }: Group, lifterId: string): boolean {
  return places.some((place) => place.lifterId === lifterId);
}

/** "Ida", "Ida and Tom", "Ida, Tom and Ben". */
function inARow(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
