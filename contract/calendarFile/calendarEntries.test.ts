import { describe, expect, test } from 'vitest';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import type { Day } from '#contract/records/day.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { calendarEntries, firstName } from './calendarEntries.ts';
import { historyAfter, noHistory, type ToldChange } from './dayHistory.ts';

const year = { from: '2026-01-01', to: '2026-12-31' };
const records = twoLifters() as ClubRecords & { club: [Club] };
const [day] = records.day as [Day];
const [one, other] = records.lifter as [ClubRecords['lifter'][0], ClubRecords['lifter'][0]];

/** The changes of the log: of one record each, a minute apart. */
function log(...entries: Partial<ToldChange['entries'][0] & { replaced: boolean }>[]): ToldChange[] {
  return entries.map(({ replaced = false, kind = 'day', id = day.id, before = null, after = null }, i) => ({
    seq: i + 1,
    madeAt: `2026-11-01T10:0${i}:00.000Z`,
    replaced,
    entries: replaced ? [] : [{ kind, id, before, after }],
  }));
}

/** What somebody reads with these records after these changes. */
function read(given: Partial<typeof records>, changes: ToldChange[], lifterId?: string) {
  return calendarEntries({ ...records, ...given }, historyAfter(noHistory, changes), { ...year, lifterId });
}

/** How often it counts when these changes come after the day was made. */
function sequenceAfter(...more: Parameters<typeof log>): number {
  return read({}, log({ after: day }, ...more))[0]!.sequence;
}

function without(lifterId: string): Day {
  const groups = day.groups.map((group) => ({
    ...group,
    places: group.places.filter((place) => place.lifterId !== lifterId),
    away: group.places.filter((place) => place.lifterId === lifterId),
  }));
  return { ...day, groups };
}

describe('a training day in the calendar', () => {
  test('says what is done, and neither who does it nor any note', () => {
    const noted: Day = {
      ...day,
      note: 'Secret plan',
      groups: day.groups.map((group) => ({
        ...group,
        places: group.places.map((place) => ({ ...place, note: 'bad knee' })),
      })),
    };
    const [entry] = read({ day: [noted] }, log({ after: noted }));
    expect(entry!.description).toContain('Sets × reps');
    const told = JSON.stringify(entry);
    for (const word of ['Secret', 'knee', firstName(one.name), firstName(other.name)])
      expect(told).not.toContain(word);
  });

  test('is called by its title, else by its lifts, else by what it is', () => {
    const groups = (['squat', 'bench', 'squat', 'deadlift'] as const).map((lift) => ({
      ...day.groups[0]!,
      lift,
    }));
    const titles = [
      { title: 'Third wave', groups },
      { title: ' ', groups },
      { title: '', groups: [] },
    ].map((fields) => read({ day: [{ ...day, ...fields }] }, [])[0]!.title);
    expect(titles).toEqual(['Third wave', 'Squat, bench press and deadlift', 'Training']);
  });

  test('that came with the club counts from when that came', () => {
    const [entry] = read({}, log({ replaced: true }));
    expect(entry).toMatchObject({ sequence: 1, changedAt: '2026-11-01T10:00:00.000Z' });
  });

  test('says first names where the club wants them, of who is there', () => {
    const club: [Club] = [{ ...records.club[0], namesInCalendar: true }];
    const named = [
      { ...one, name: 'Ida Quill' },
      { ...other, name: ' Tom  Ash' },
    ];
    const [both] = read({ club, lifter: named }, log({ after: day }));
    expect(both!.description).toContain('With Ida and Tom.');
    expect(both!.description).not.toMatch(/Quill|Ash/);
    const [alone] = read({ club, lifter: named, day: [without(one.id)] }, log({ after: day }));
    expect(alone!.description).toContain('With Tom.');
  });

  test('keeps its id and counts on when it changes; what changes something else leaves it as it is', () => {
    const moved = { ...day, date: '2026-12-01' };
    const [first] = read({}, log({ after: day }, { kind: 'bar', id: 'bar' }));
    const [then] = read(
      { day: [moved] },
      log({ after: day }, { kind: 'bar', id: 'bar' }, { before: day, after: moved }),
    );
    expect(first).toMatchObject({ id: day.id, date: day.date, changedAt: '2026-11-01T10:00:00.000Z' });
    expect(then).toMatchObject({ id: day.id, date: '2026-12-01', changedAt: '2026-11-01T10:02:00.000Z' });
    expect(then!.sequence).toBeGreaterThan(first!.sequence);
  });

  test('counts on when the usual hour changes, and not when another setting does', () => {
    const club = records.club[0];
    const later = { ...club, trainingStartsAt: '19:00' };
    expect(sequenceAfter({ kind: 'club', before: club, after: later })).toBeGreaterThan(sequenceAfter());
    expect(sequenceAfter({ kind: 'club', before: club, after: { ...club, note: 'x' } })).toBe(
      sequenceAfter(),
    );
  });

  test('that was removed is cancelled, and stands again when that is undone; each time it counts on', () => {
    const changes = log({ after: day }, { before: day }, { after: day });
    const entries = [1, 2, 3].map((n) => read({ day: n === 2 ? [] : [day] }, changes.slice(0, n)));
    expect(entries.map((each) => each.map(({ id, cancelled }) => [id, cancelled]))).toEqual([
      [[day.id, false]],
      [[day.id, true]],
      [[day.id, false]],
    ]);
    expect(entries.map(([entry]) => entry!.sequence)).toEqual([1, 2, 3]);
  });

  test('that another club took the place of is cancelled', () => {
    const [entry] = read({ day: [] }, log({ after: day }, { replaced: true }));
    expect(entry).toMatchObject({ id: day.id, cancelled: true, changedAt: '2026-11-01T10:01:00.000Z' });
    expect(entry!.sequence).toBeGreaterThan(read({}, log({ after: day }))[0]!.sequence);
  });

  test('lies in the calendar of those years alone that are asked for', () => {
    const dates = ['2025-12-31', '2026-01-01', '2026-12-31', '2027-01-01'];
    const days = dates.map((date) => ({ ...day, id: date, date }));
    expect(read({ day: days.toReversed() }, []).map(({ date }) => date)).toEqual(dates.slice(1, 3));
  });
});

describe("a lifter's own calendar", () => {
  test('has the groups in which the lifter has a place, and no other', () => {
    const [group] = day.groups;
    const two: Day = {
      ...day,
      groups: [
        { ...group!, id: 'a', title: 'Mine', places: group!.places.filter((p) => p.lifterId === one.id) },
        { ...group!, id: 'b', title: 'Theirs', places: group!.places.filter((p) => p.lifterId !== one.id) },
      ],
    };
    const [entry] = read({ day: [two] }, [], one.id);
    expect(entry!.description).toContain('Mine');
    expect(entry!.description).not.toContain('Theirs');
  });

  test('cancels a day that the lifter was taken off, and knows nothing of one that never was theirs', () => {
    const changes = log({ after: day }, { before: day, after: without(one.id) });
    expect(read({ day: [without(one.id)] }, changes, one.id)).toMatchObject([{ cancelled: true }]);
    expect(read({ day: [without(one.id)] }, changes, other.id)).toMatchObject([{ cancelled: false }]);
    expect(read({ day: [without(one.id)] }, log({ after: without(one.id) }), one.id)).toEqual([]);
    expect(read({ day: [] }, log({ after: without(one.id) }, { before: without(one.id) }), one.id)).toEqual(
      [],
    );
  });
});

const goes = (lifterId: string, meetIds: string[]) => ({
  id: 'entry',
  seasonId: 'season',
  lifterId,
  meetIds,
  classes: [],
});

const ofCup = (given: Parameters<typeof read>[0], changes: ToldChange[], lifterId?: string) =>
  read({ day: [], ...given }, changes, lifterId).filter(({ id }) => id === 'meet.cup');

describe('a meet in the calendar', () => {
  const cup = { id: 'cup', title: 'Quarry Cup', date: '2026-12-12', note: 'Secret' };
  const entered = { kind: 'seasonEntry', id: 'entry' };

  test('stands with its title for everybody, moved when it moves, cancelled when it is removed', () => {
    const later = { ...cup, date: '2026-12-19' };
    const changes = log(
      { kind: 'meet', id: 'cup', after: cup },
      { kind: 'meet', id: 'cup', before: cup, after: later },
      { kind: 'meet', id: 'cup', before: later },
    );
    const stand = [cup, later].map((meet, at) => ofCup({ meet: [meet] }, changes.slice(0, at + 1))[0]!);
    const gone = ofCup({ meet: [] }, changes)[0]!;
    expect([...stand, gone].map(({ date, sequence, cancelled }) => [date, sequence, cancelled])).toEqual([
      ['2026-12-12', 1, false],
      ['2026-12-19', 2, false],
      ['2026-12-19', 3, true],
    ]);
    expect(stand[0]).toMatchObject({ title: 'Quarry Cup', wholeDay: true, description: '' });
  });

  test('stands in the calendar of whoever trains for it, and is cancelled there alone when they go elsewhere', () => {
    const here = goes(one.id, ['cup']);
    const elsewhere = goes(one.id, ['other']);
    const changes = log(
      { kind: 'meet', id: 'cup', after: cup },
      { ...entered, after: here },
      { ...entered, before: here, after: elsewhere },
    );
    expect(ofCup({ meet: [cup], seasonEntry: [here] }, changes.slice(0, 2), one.id)).toMatchObject([
      { cancelled: false, sequence: 2 },
    ]);
    const left = { meet: [cup], seasonEntry: [elsewhere] };
    expect(ofCup(left, changes, one.id)).toMatchObject([{ cancelled: true, sequence: 3 }]);
    expect(ofCup(left, changes, other.id)).toEqual([]);
    expect(ofCup(left, changes)).toMatchObject([{ cancelled: false }]);
  });
});

test('history read in parts is history read at once', () => {
  const changes = log({ after: day }, { before: day }, { replaced: true }, { after: day });
  const parts = changes.reduce((known, change) => historyAfter(known, [change]), noHistory);
  expect(parts).toEqual(historyAfter(noHistory, changes));
});
