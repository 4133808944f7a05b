import * as fc from 'fast-check';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { type ClubSeason, clubSeason as shape } from '#contract/season/clubSeason.ts';
import { reasonSentence, weekDifferenceSentences } from '#contract/season/differenceSentences.ts';
import type { PlannedDay, PlannedGroup, SeasonPlan } from '#contract/season/seasonPlan.ts';
import { seasonWarningSentence } from '#contract/season/seasonWarningSentence.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { clubSeason } from './clubSeason.ts';
import { groupsFor } from './groupsFor.ts';
import { keepPast } from './keepPast.ts';
import { planDifferences } from './planDifferences.ts';

/** A Wednesday; the invented club's season began six weeks before, and its meets are on Saturdays nine and sixteen weeks later. */
const TODAY = '2026-11-25';
const G = 9.80665;
const club = millraceClub(TODAY);
const MONDAY = mondayOf(TODAY);
const later = (date: string, days: number) => dateOfDay(dayNumber(date) + days);

const early = (records: ClubRecords) => clubSeason(records, 'season-early', TODAY);
const planFor = (season: ClubSeason, lifterId: string): SeasonPlan =>
  season.plans[season.lifters.find((one) => one.lifterId === lifterId)!.plan!]!;
const dayOf = (plan: SeasonPlan, date: string): PlannedDay | undefined =>
  plan.weeks.flatMap(({ days }) => days).find((day) => day.date === date);
const withMeet = (meetId: string, date: string): ClubRecords => ({
  ...club,
  meet: club.meet.map((meet) => (meet.id === meetId ? { ...meet, date } : meet)),
});
const tollbridge = club.meet.find(({ id }) => id === 'meet-tollbridge')!;

let season: ClubSeason;
beforeAll(() => {
  season = early(club);
});

const liftsIn = (plan: SeasonPlan, monday: string) =>
  plan.weeks.find((week) => week.monday === monday)!.load.lifts;
const closedOn = (lifter: string) =>
  planFor(season, lifter)
    .weeks.flatMap(({ days }) => days)
    .filter(({ closed }) => closed !== null)
    .map(({ closed }) => closed);
const lastPhases = (of: ClubSeason, lifter: string) =>
  planFor(of, lifter)
    .weeks.slice(-5)
    .map(({ phaseId, weekOfPhase }) => [phaseId, weekOfPhase]);
const changedBy = (records: ClubRecords) => planDifferences(season, early(records), TODAY);
const daysOfIlse = (of: ClubSeason, isWanted: (date: string) => boolean) =>
  planFor(of, 'lifter-ilse')
    .weeks.flatMap((week) => week.days)
    .filter(({ date }) => isWanted(date));
const cell = ({ lifterId, date, askedId }: { lifterId: string | null; date: string; askedId: string }) =>
  `${lifterId} ${date} ${askedId}`;

/** What is told of one lifter's age, had they been born then. */
const minorTold = (bornOn: string | null) =>
  early({
    ...club,
    lifter: club.lifter.map((one) => (one.id === 'lifter-lars' ? { ...one, bornOn } : one)),
  })
    .lifters.find(({ lifterId }) => lifterId === 'lifter-lars')!
    .warnings.filter(({ code }) => code === 'minor');

describe('a season of the club', () => {
  it('has a whole plan for everybody, one for all of whom the same is asked', () => {
    expect(shape.parse(season)).toEqual(season);
    expect(season.lifters).toHaveLength(8);
    const plan = (lifter: string) => season.lifters.find(({ lifterId }) => lifterId === lifter)!.plan;
    // Ilse and Tereza go to the same meet. Emre is away for a week, Bastien has a day set for him alone.
    expect(plan('lifter-ilse')).toBe(plan('lifter-tereza'));
    const others = ['lifter-emre', 'lifter-bastien', 'lifter-lars', 'lifter-kwabena', 'lifter-ilse'];
    expect(new Set(others.map(plan)).size).toBe(5);
  });

  it('has what the coach set by hand, for everybody and before that for one', () => {
    const speedSquats = (lifter: string, date: string) =>
      dayOf(planFor(season, lifter), date)!.groups.find(({ askedId }) => askedId === 'speed-squat');
    const [next, after] = [later(MONDAY, 10), later(MONDAY, 17)];
    expect(speedSquats('lifter-ilse', next)).toMatchObject({
      byHand: true,
      blocks: [{ sets: 2 }, { sets: 6 }],
    });
    expect(speedSquats('lifter-ilse', after)).toMatchObject({ byHand: false });
    expect(speedSquats('lifter-bastien', after)).toBeUndefined();
    expect(speedSquats('lifter-bastien', next)).toMatchObject({ byHand: true });
    // What depends on it is worked out again: fewer lifts that week.
    const week = later(MONDAY, 7);
    const asAsked = early({ ...club, plannedByHand: [] });
    expect(liftsIn(planFor(season, 'lifter-ilse'), week)).toBeLessThan(
      liftsIn(planFor(asAsked, 'lifter-ilse'), week),
    );
  });

  it('plans around absences of the club and of one', () => {
    expect(new Set(closedOn('lifter-ilse'))).toEqual(new Set(['the floor is sanded']));
    expect(new Set(closedOn('lifter-emre'))).toEqual(new Set(['the floor is sanded', 'away for work']));
  });

  it('warns of what a lifter is held to, and of a meet that nothing can be planned for', () => {
    const warnings = (records: ClubRecords, lifter: string) =>
      early(records)
        .lifters.find(({ lifterId }) => lifterId === lifter)!
        .warnings.map(seasonWarningSentence);
    expect(warnings(club, 'lifter-maribel')[0]).toMatch(
      /^\d+ days of squat from .* restricted until Mon 14 Dec\./,
    );
    const past = withMeet('meet-tollbridge', '2026-01-10');
    expect(warnings(past, 'lifter-odhran')[0]).toMatch(/^Tollbridge Open on .* is not planned for/);
    expect(early(past).lifters.find(({ lifterId }) => lifterId === 'lifter-ilse')!.plan).toBeNull();
  });

  it('tells of heavy singles and bands for somebody under 18, up to the birthday, and of nobody older', () => {
    // Bands on Thursday and Saturday, a heavy single on Monday; the bands of the next Thursday are of the birthday.
    expect(minorTold('2008-12-03').map(seasonWarningSentence)).toEqual([
      expect.stringMatching(
        /^17 years old, with heavy singles or bands on 3 days from Thu 26 Nov on: a qualified coach/,
      ),
    ]);
    expect(minorTold('2012-01-01')).toMatchObject([{ age: 14 }]);
    expect(minorTold('2008-11-25')).toEqual([]);
    expect(minorTold(null)).toEqual([]);
  });

  it('gives bands by strength: the strongest level that a lifter reaches', () => {
    const late = clubSeason(club, 'season-late', TODAY);
    const { ownBoxes } = late.lifters[0]!;
    const level = (timesBodyMass: number | null) =>
      groupsFor(
        { groups: late.plans[0]!.weeks[0]!.days.flatMap(({ groups }) => groups) },
        { timesBodyMass: { squat: timesBodyMass, bench: null, deadlift: null }, ownBoxes },
      )
        .filter(({ askedId }) => askedId === 'speed-squat')
        .map(({ leastTimesBodyMass }) => leastTimesBodyMass);
    expect([level(null), level(2), level(3.6)]).toEqual([[null], [null], [3.5]]);
  });
});

test('the plan made again from the same records is the same, in whatever order they come', () => {
  fc.assert(
    fc.property(
      fc.shuffledSubarray(club.seasonEntry, { minLength: club.seasonEntry.length }),
      fc.shuffledSubarray(club.plannedByHand, { minLength: club.plannedByHand.length }),
      fc.shuffledSubarray(club.absence, { minLength: club.absence.length }),
      (seasonEntry, plannedByHand, absence) => {
        const again = early({ ...club, seasonEntry, plannedByHand, absence });
        for (const { lifterId } of season.lifters)
          expect(planFor(again, lifterId)).toEqual(planFor(season, lifterId));
      },
    ),
    { numRuns: 20 },
  );
});

test('a meet that moves by a week moves what hangs on it and nothing else', () => {
  const moved = early(withMeet('meet-tollbridge', later(tollbridge.date, 7)));
  expect(lastPhases(moved, 'lifter-ilse')).toEqual(lastPhases(season, 'lifter-ilse'));
  // Lars and Maribel do not go there.
  for (const lifter of ['lifter-lars', 'lifter-maribel'])
    expect(planFor(moved, lifter)).toEqual(planFor(season, lifter));
  const differences = planDifferences(season, moved, TODAY);
  expect(differences.map(({ lifterId }) => lifterId)).not.toContain('lifter-lars');
  for (const { lifterId, why } of differences) {
    expect(lifterId).not.toBe('lifter-maribel');
    expect(why.map(reasonSentence)).toEqual(['Tollbridge Open is on Sat 6 Feb instead of Sat 30 Jan.']);
  }
});

describe('differences from a plan that was taken', () => {
  it('are none where nothing changed, and never of what is past', () => {
    expect(planDifferences(season, early(club), TODAY)).toEqual([]);
    const absence = {
      id: 'past',
      lifterId: null,
      fromOn: later(TODAY, -9),
      untilOn: later(TODAY, -2),
      why: 'snow',
    };
    // What was missed then may change which variant is due, but no day that is over.
    const missed = early({ ...club, absence: [...club.absence, absence] });
    const days = planDifferences(season, missed, TODAY).flatMap(({ weeks }) =>
      weeks.flatMap((week) => week.days),
    );
    expect(days.length).toBeGreaterThan(0);
    expect(days.filter(({ date }) => date < TODAY)).toEqual([]);
  });

  it('tell the days, and why: an absence, a group set by hand, who is new and who has gone', () => {
    const away: RecordOf<'absence'> = {
      id: 'away',
      lifterId: 'lifter-ilse',
      fromOn: later(MONDAY, 7),
      untilOn: later(MONDAY, 7),
      why: 'a wedding',
    };
    const [ilse, ...others] = changedBy({ ...club, absence: [...club.absence, away] });
    expect(others).toEqual([]);
    expect(ilse!.why.map(reasonSentence)).toEqual(['No training on Mon 30 Nov: a wedding.']);
    expect(ilse!.weeks[0]!.days[0]).toMatchObject({ date: '2026-11-30', what: 'gone' });
    expect(weekDifferenceSentences(ilse!.weeks[0]!)[0]).toMatch(/^Mon 30 Nov: no /);
    const freed = changedBy({
      ...club,
      plannedByHand: club.plannedByHand.filter(({ lifterId }) => lifterId === null),
    });
    expect(freed.map(({ lifterId }) => lifterId)).toEqual(['lifter-bastien']);
    expect(freed[0]!.weeks[0]!.days[0]!.groups).toEqual([
      { askedId: 'speed-squat', title: 'Speed squat', what: 'new', in: [] },
    ]);
    const less = club.seasonEntry.filter(({ lifterId }) => lifterId !== 'lifter-ilse');
    expect(changedBy({ ...club, seasonEntry: less })).toEqual([
      { lifterId: 'lifter-ilse', what: 'gone', why: [], weeks: [] },
    ]);
  });
});

const farOff = (records: ClubRecords) =>
  early(records).lifters.flatMap(({ lifterId, warnings }) =>
    warnings.flatMap((one) =>
      one.code === 'boxFarOff' && one.aboveParallelM === 0 ? [[lifterId, seasonWarningSentence(one)]] : [],
    ),
  );

const boxOf = (of: ClubSeason, lifterId: string) =>
  of.lifters
    .find((one) => one.lifterId === lifterId)!
    .ownBoxes!.find(({ aboveParallelM }) => aboveParallelM === 0)!;
const oneBox = (heightM: number): ClubRecords => ({
  ...club,
  box: [{ ...club.box[0]!, sort: 'box', heightM, pieces: 2 }],
});

describe('own boxes', () => {
  it('that the club buys change the days of those who get another, and the plan says why', () => {
    const before = early(oneBox(0.36));
    const higher = { ...club.box[0]!, id: 'higher', sort: 'box' as const, heightM: 0.44, pieces: 1 };
    const records = oneBox(0.36);
    const now = early({ ...records, box: [...records.box, higher] });
    const differences = planDifferences(before, now, TODAY);
    // The tall ones alone: for everybody else 36 cm is nearer.
    const tall = season.lifters.filter(({ lifterId }) => boxOf(season, lifterId).wantedM > 0.4);
    expect(differences.map(({ lifterId }) => lifterId)).toEqual(tall.map(({ lifterId }) => lifterId));
    for (const { why, weeks } of differences) {
      expect(why.map(reasonSentence)).toContain(
        'The squat at parallel is now on a box of 44 cm instead of 36 cm: heights were measured, or the club has other boxes.',
      );
      expect(why.map(({ code }) => code)).not.toContain('strength');
      const fields = weeks.flatMap(({ days }) => days.flatMap(({ groups }) => groups.flatMap((g) => g.in)));
      expect(new Set(fields)).toEqual(new Set(['variant']));
    }
  });

  it('far from where they should be are told with what mends it, near ones are not', () => {
    expect(farOff(club)).toEqual([]);
    const only = Object.fromEntries(farOff(oneBox(0.36)));
    for (const { lifterId } of season.lifters) {
      const { wantedM } = boxOf(season, lifterId);
      if (Math.abs(wantedM - 0.36) < 0.02) expect(only[lifterId]).toBeUndefined();
      else
        expect(only[lifterId]).toMatch(/the nearest that the club can build is 36 cm, .* Add a box or mats/);
    }
    // Without any box the gear says so, once for everybody.
    expect(farOff({ ...club, box: [] })).toEqual([]);
  });

  it('of what is past stay known when the method asks for them no more', () => {
    const fixed = structuredClone(club.method);
    for (const { methodDocument } of fixed)
      for (const { days } of methodDocument.phases)
        for (const { groups } of days)
          for (const { variants } of groups)
            for (const one of variants)
              if (one.start.way === 'ownBox') one.start = { way: 'box', heightM: 0.36 };
    const now = keepPast(season, early({ ...club, method: fixed }), TODAY, G);
    const lifter = now.lifters.find(({ lifterId }) => lifterId === 'lifter-lars')!;
    const squats = now.plans[lifter.plan!]!.weeks.flatMap(({ days }) =>
      days.flatMap((day) =>
        groupsFor(day, lifter).flatMap(({ askedId, start }) =>
          askedId === 'speed-squat' ? [{ isPast: day.date < TODAY, heightM: start.heightM }] : [],
        ),
      ),
    );
    const own = boxOf(season, 'lifter-lars').heightM;
    expect(own).not.toBe(0.36);
    for (const { isPast, heightM } of squats) expect(heightM).toBe(isPast ? own : 0.36);
    expect(squats.some(({ isPast }) => isPast)).toBe(true);
  });
});

const inClass = (entryClasses: RecordOf<'seasonEntry'>['classes'], meetIds?: string[]) => ({
  ...club,
  seasonEntry: club.seasonEntry.map((entry) =>
    entry.lifterId === 'lifter-emre'
      ? { ...entry, classes: entryClasses, meetIds: meetIds ?? entry.meetIds }
      : entry,
  ),
});

test('another class is told of that lifter alone, and changes no week of the plan', () => {
  const meetId = 'meet-tollbridge';
  const told = (records: ClubRecords) =>
    changedBy(records).map(({ lifterId, why, weeks }) => [lifterId, why.map(reasonSentence), weeks.length]);
  expect(told(inClass([{ meetId, upToKg: 93 }]))).toEqual([
    ['lifter-emre', ['Class at Tollbridge Open: 93 kg instead of 83 kg.'], 0],
  ]);
  expect(told(inClass([]))).toEqual([
    ['lifter-emre', ['Class at Tollbridge Open: no longer said; it was 83 kg.'], 0],
  ]);
  // Whoever no longer goes there is told that alone.
  const elsewhere = changedBy(inClass([], ['meet-lower-weir']));
  expect(elsewhere[0]!.why.map(({ code }) => code)).not.toContain('class');
  // A plan that was taken before classes were kept knew of none.
  const before: ClubSeason = {
    ...season,
    lifters: season.lifters.map(({ classes: _none, ...lifter }) => lifter),
  };
  expect(
    planDifferences(before, season, TODAY).find(({ lifterId }) => lifterId === 'lifter-emre'),
  ).toMatchObject({
    why: [{ code: 'class', before: null, now: { upToKg: 83 } }],
    weeks: [],
  });
  expect(planDifferences(before, season, later(tollbridge.date, 200))).toEqual([]);
});

test('what lies before today stays as it was taken when a meet moves', () => {
  const moved = early(withMeet('meet-tollbridge', later(tollbridge.date, 14)));
  const kept = keepPast(season, moved, TODAY, G);
  expect(daysOfIlse(kept, (date) => date < TODAY)).toEqual(daysOfIlse(season, (date) => date < TODAY));
  expect(daysOfIlse(kept, (date) => date >= TODAY)).toEqual(daysOfIlse(moved, (date) => date >= TODAY));
  expect(shape.parse(kept)).toEqual(kept);
});

test('every group set by hand survives every planning, or is named', () => {
  const asked = season.method.phases
    .flatMap(({ days }) => days.flatMap(({ groups }) => groups))
    .map(({ id }) => id);
  const set = fc.record({
    lifterId: fc.constantFrom(null, 'lifter-ilse', 'lifter-lars'),
    date: fc.integer({ min: 0, max: 130 }).map((days) => later(MONDAY, days)),
    askedId: fc.constantFrom(...asked),
    instead: fc.constantFrom<RecordOf<'plannedByHand'>['instead']>(null, {
      start: null,
      aim: null,
      blocks: [{ sets: 7, reps: 7, restSeconds: 77, shareOfAim: 1 }],
    }),
  });
  fc.assert(
    fc.property(
      fc.uniqueArray(set, { maxLength: 12, selector: cell }),
      fc.integer({ min: -4, max: 6 }),
      fc.integer({ min: 0, max: 60 }),
      (sets, weeks, away) => {
        const records = withMeet('meet-tollbridge', later(tollbridge.date, 7 * weeks));
        const absence = {
          id: 'a',
          lifterId: null,
          fromOn: later(MONDAY, away),
          untilOn: later(MONDAY, away + 5),
          why: 'shut',
        };
        const plannedByHand = sets.map((one, at) => ({
          ...one,
          id: `set-${at}`,
          seasonId: 'season-early',
          note: '',
        }));
        const again = early({ ...records, absence: [absence], plannedByHand });
        for (const { lifterId } of again.lifters) {
          const plan = planFor(again, lifterId);
          const own = sets.filter((one) => one.lifterId === lifterId);
          const all = sets.filter(
            (one) =>
              one.lifterId === null &&
              !own.some((mine) => mine.date === one.date && mine.askedId === one.askedId),
          );
          for (const { date, askedId, instead } of [...own, ...all]) {
            const isNamed = plan.warnings.some(
              (warning) =>
                warning.code === 'strayByHand' && warning.date === date && warning.askedId === askedId,
            );
            const groups: PlannedGroup[] = dayOf(plan, date)?.groups ?? [];
            const there = groups.filter((group) => group.askedId === askedId);
            if (instead === null || isNamed) expect(there).toEqual([]);
            else {
              expect(there.length).toBeGreaterThan(0);
              for (const { blocks, byHand } of there)
                expect({ blocks, byHand }).toEqual({ blocks: instead.blocks, byHand: true });
            }
          }
        }
      },
    ),
    { numRuns: 25 },
  );
});
