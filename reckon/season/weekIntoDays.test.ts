import * as fc from 'fast-check';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { boxHeights, boxOfHeight } from '#contract/day/boxHeights.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Day, day as dayKind, type Group } from '#contract/records/day.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { leftAloneSentence } from '#contract/season/weekTaking.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { clubSeason } from './clubSeason.ts';
import { groupsFor } from './groupsFor.ts';
import { weekIntoDays } from './weekIntoDays.ts';

const TODAY = '2026-11-25';
const NEXT = dateOfDay(dayNumber(mondayOf(TODAY)) + 7);
const whole = millraceClub(TODAY);
const club: ClubRecords = { ...whole, day: [] };
const early = (records: ClubRecords) => clubSeason(records, 'season-early', TODAY);

/** Takes the week and gives the days that the club then has. */
function taken(season: ClubSeason, day: Day[], logged: string[] = [], today = TODAY) {
  let made = 0;
  const newId = () => `made-${day.length}-${(made += 1)}`;
  const beside = { records: { ...club, day }, today, logged: new Set(logged), newId };
  const { days, taking } = weekIntoDays(season, NEXT, beside);
  const ids = new Set(days.map(({ id }) => id));
  return { days: [...day.filter(({ id }) => !ids.has(id)), ...days], changed: days, taking };
}
const whatOf = ({ taking }: ReturnType<typeof taken>) =>
  taking.days.flatMap(({ groups }) => groups.map(({ what }) => what));
const withGroup = (days: Day[], askedId: string, change: (day: Day, at: number) => Day): Day[] =>
  days.map((day) => {
    const at = day.groups.findIndex(({ planned }) => planned?.askedId === askedId);
    return at < 0 ? day : change(day, at);
  });

const work = (of: { lift: string; blocks: unknown; aim: unknown }[]) =>
  of.map(({ lift, blocks, aim }) => ({ lift, blocks, aim }));

let season: ClubSeason;
let first: ReturnType<typeof taken>;
beforeAll(() => {
  season = early(whole);
  first = taken(season, []);
});

describe('a week that is taken', () => {
  it('is ordinary days, each lifter in the groups that the plan has for them, on a rack that takes the lift', () => {
    for (const day of first.days) expect(dayKind.shape.parse(day)).toEqual(day);
    for (const lifter of season.lifters) {
      const planned = season.plans[lifter.plan!]!.weeks.find(({ monday }) => monday === NEXT)!.days;
      for (const day of planned.filter(({ closed }) => closed === null)) {
        const there = first.days.find(({ date }) => date === day.date)!.groups;
        const own = there.filter(({ places }) => places.some(({ lifterId }) => lifterId === lifter.lifterId));
        expect(work(own)).toEqual(expect.arrayContaining(work(groupsFor(day, lifter))));
        expect(own).toHaveLength(groupsFor(day, lifter).length);
      }
    }
    for (const { lift, places } of first.days.flatMap(({ groups }) => groups))
      for (const { rackId } of places)
        expect(club.rack.find(({ id }) => id === rackId)!.lifts).toContain(lift);
  });

  it('shares the lifters of a group out among the racks', () => {
    const speed = first.days
      .flatMap(({ groups }) => groups)
      .find(({ planned }) => planned?.askedId === 'speed-squat')!;
    expect(new Set(speed.places.map(({ rackId }) => rackId)).size).toBeGreaterThan(1);
  });

  it('taken again without a change changes nothing', () => {
    const again = taken(season, first.days);
    expect(again.changed).toEqual([]);
    expect(new Set(whatOf(again))).toEqual(new Set(['same']));
  });

  it('follows a later change of the plan, and keeps racks, turns and what was set for a lifter', () => {
    const own = withGroup(first.days, 'speed-squat', (day, at) => {
      const { places, ...group } = day.groups[at]!;
      const turned = places.toReversed().map((place) => ({ ...place, note: 'Stay tight.' }));
      return { ...day, groups: day.groups.with(at, { ...group, places: turned }) };
    });
    const later = taken(early({ ...whole, plannedByHand: [] }), own);
    const group = later.days
      .flatMap(({ groups }) => groups)
      .find(({ planned }) => planned?.askedId === 'speed-squat')!;
    expect(group.blocks.at(-1)).toMatchObject({ sets: 8 });
    const before = first.days
      .flatMap(({ groups }) => groups)
      .find(({ planned }) => planned?.askedId === 'speed-squat')!;
    expect(group.places.map(({ lifterId, rackId, note }) => ({ lifterId, rackId, note }))).toEqual(
      before.places.toReversed().map(({ lifterId, rackId }) => ({ lifterId, rackId, note: 'Stay tight.' })),
    );
    expect(later.taking.left).toEqual([]);
  });

  it('leaves a group alone that the coach has changed, and says so', () => {
    const own = withGroup(first.days, 'speed-squat', (day, at) => ({
      ...day,
      groups: day.groups.with(at, { ...day.groups[at]!, start: { way: 'free', heightM: null } }),
    }));
    const later = taken(early({ ...whole, plannedByHand: [] }), own);
    const edited = own
      .flatMap(({ groups }) => groups)
      .find(({ planned, start }) => planned?.askedId === 'speed-squat' && start.way === 'free')!;
    expect(later.days.flatMap(({ groups }) => groups)).toContainEqual(edited);
    expect(later.taking.left.map(leftAloneSentence)).toEqual([
      'Thu 3 Dec, Speed squat: you changed this group yourself, so it stays as it is.',
    ]);
  });

  it('takes out what the plan no longer has, and stands beside what the coach put on the day', () => {
    const extra = whole.day[0]!.groups[0]!;
    const own = first.days.map((day) => ({ ...day, groups: [...day.groups, extra] }));
    const gone = taken({ ...season, lifters: [] }, own);
    expect(new Set(whatOf(gone))).toEqual(new Set(['gone']));
    for (const { groups } of gone.days) expect(groups).toEqual([extra]);
  });

  it('says where no rack takes a lift', () => {
    const beside = {
      records: { rack: [], day: [] },
      today: TODAY,
      logged: new Set<string>(),
      newId: () => 'x',
    };
    const { days, taking } = weekIntoDays(season, NEXT, beside);
    expect(days).toEqual([]);
    expect(taking.left[0]!.why).toBe('noRack');
  });
});

const squatIn = (days: readonly Day[]): Group =>
  days.flatMap(({ groups }) => groups).find(({ planned }) => planned?.askedId === 'speed-squat')!;
const boxesIn = (group: Group) =>
  new Map(group.places.map((place) => [place.lifterId, startOf(group, place).heightM]));
/** The season as it is once the club has one box alone. */
const onlyBox = (heightM: number) =>
  early({ ...whole, box: [{ ...whole.box[0]!, sort: 'box', heightM, pieces: 2 }] });
const inHand = (days: Day[], lifterId: string, heightM: number) =>
  withGroup(days, 'speed-squat', (day, at) => {
    const group = day.groups[at]!;
    const places = group.places.map((place) =>
      place.lifterId === lifterId ? { ...place, start: { way: 'box' as const, heightM } } : place,
    );
    return { ...day, groups: day.groups.with(at, { ...group, places }) };
  });

describe('own boxes in a week that is taken', () => {
  it('stand at each place as the season has them, and each is one that the club builds', () => {
    const group = squatIn(first.days);
    const built = boxHeights(whole.box);
    const own = new Map(season.lifters.map(({ lifterId, ownBoxes }) => [lifterId, ownBoxes!]));
    for (const [lifterId, heightM] of boxesIn(group)) {
      const wanted = own.get(lifterId)!.find(({ aboveParallelM }) => aboveParallelM === 0)!;
      expect(heightM).toBe(wanted.heightM);
      expect(boxOfHeight(built, heightM!)).toBeDefined();
    }
    expect(new Set(boxesIn(group).values()).size).toBeGreaterThan(2);
  });

  it('follow the plan when the club has other boxes, but for whom the coach put on another', () => {
    const { lifterId } = squatIn(first.days).places.find(({ start }) => start !== null)!;
    const own = inHand(first.days, lifterId, 0.28);
    // The coach alone changed a box: the plan wants nothing else.
    expect(taken(season, own).changed).toEqual([]);
    const later = taken(onlyBox(0.36), own);
    expect(later.taking.left).toEqual([]);
    for (const [id, heightM] of boxesIn(squatIn(later.days)))
      expect(heightM).toBe(id === lifterId ? 0.28 : 0.36);
    // Back with all boxes, all but that one sit as before.
    const back = boxesIn(squatIn(taken(season, later.days).days));
    expect(back).toEqual(boxesIn(squatIn(own)));
  });

  it('leave a lifter whom the coach put on the box of the group there, whatever that becomes', () => {
    const group = squatIn(first.days);
    const { lifterId } = group.places.find(({ start }) => start !== null)!;
    const common = group.start.heightM!;
    const own = withGroup(first.days, 'speed-squat', (day, at) => {
      const of = day.groups[at]!;
      const places = of.places.map((place) =>
        place.lifterId === lifterId ? { ...place, start: null } : place,
      );
      return { ...day, groups: day.groups.with(at, { ...of, places }) };
    });
    const other = common + 0.05;
    expect(boxesIn(squatIn(taken(onlyBox(other), own).days)).get(lifterId)).toBe(common);
  });
});

test('a day with logged sets and days that are past are never touched, whatever the plan becomes', () => {
  fc.assert(
    fc.property(
      fc.subarray([0, 1, 2, 3]),
      fc.integer({ min: 0, max: 8 }),
      fc.integer({ min: -4, max: 4 }),
      (loggedAt, daysOn, weeks) => {
        const today = dateOfDay(dayNumber(NEXT) + daysOn - 1);
        const logged = loggedAt.flatMap((at) => first.days[at]?.id ?? []);
        const meet = whole.meet.map((one) => ({ ...one, date: dateOfDay(dayNumber(one.date) + 7 * weeks) }));
        const later = taken(early({ ...whole, meet, plannedByHand: [] }), first.days, logged, today);
        for (const day of first.days)
          if (logged.includes(day.id) || day.date < today) expect(later.days).toContainEqual(day);
        for (const { id, date } of later.changed) {
          expect(logged).not.toContain(id);
          expect(date >= today).toBe(true);
        }
      },
    ),
    { numRuns: 40 },
  );
});
