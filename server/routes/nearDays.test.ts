import { expect, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { Day } from '#contract/records/day.ts';
import { type NearDay, nearDay } from '#contract/season/nearDay.ts';
import { type StrengthAhead, strengthAhead } from '#contract/season/strengthAhead.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { solveDay } from '#reckon/day/solveDay.ts';
import { testApp } from '#server/tests/testApp.ts';

const today = new Date().toISOString().slice(0, 10);
const later = (days: number) => dateOfDay(dayNumber(today) + days);
const next = mondayOf(later(7));
const whole = millraceClub(today);

/** One of the invented club's early crew, whose log is not there: he goes by his bests. */
async function club(nearWeeks?: number, ofClub: number | null = null, rack = whole.rack) {
  const app = await testApp({
    ...whole,
    club: whole.club.map((settings) => ({ ...settings, nearWeeks: ofClub })),
    day: [],
    rack,
    seasonEntry: whole.seasonEntry.filter(({ lifterId }) => lifterId === 'lifter-lars'),
    method: whole.method.map(({ methodDocument, ...one }) => ({
      ...one,
      methodDocument: { ...methodDocument, ...(nearWeeks === undefined ? {} : { nearWeeks }) },
    })),
  });
  const get = (path: string) => app.ask('GET', `/api/seasons/season-early/lifters/${path}`);
  const near = async (lifterId: string, monday: string): Promise<NearDay[]> => {
    const days: NearDay[] = [];
    for (const date of [0, 1, 2, 3, 4, 5, 6].map((at) => dateOfDay(dayNumber(monday) + at))) {
      const day = nearDay.nullable().parse((await get(`${lifterId}/days/${date}`)).json);
      if (day !== null) days.push(day);
    }
    return days;
  };
  return { ...app, get, near };
}

test('a near day is what the day solving makes of the same day once it is taken, by the strength of today', async () => {
  const { ask, store, near } = await club();
  const foretold = await near('lifter-lars', next);
  expect(foretold.length).toBeGreaterThan(0);
  await ask('POST', `/api/seasons/season-early/weeks/${next}`);
  const { records } = await store.records();
  const asked = await ask('GET', `/api/estimates?lifterId=lifter-lars&on=${today}`);
  const { estimates }: { estimates: StrengthEstimate[] } = asked.json;
  for (const { date, works } of foretold) {
    const day: Day = records.day.find((one) => one.date === date)!;
    const solved = solveDay(records, day, estimates).groups.flatMap(({ places }) => places);
    expect(works.map(({ place }) => place)).toEqual(
      solved.map((place) => ({ ...place, solved: { ...place.solved!, others: [] } })),
    );
  }
  // Now that the days stand there, the same is said of them.
  expect((await near('lifter-lars', next)).map(({ works }) => works)).toEqual(
    foretold.map(({ works }) => works),
  );
}, 60_000);

test('beyond the weeks that method or club name nothing is worked out, and none where they name none', async () => {
  const two = await club();
  const far = mondayOf(later(21));
  expect(await two.near('lifter-lars', far)).toEqual([]);
  const none = await club(0);
  expect(await none.near('lifter-lars', next)).toEqual([]);
  // The club's own number leads.
  const noneByClub = await club(4, 0);
  expect(await noneByClub.near('lifter-lars', next)).toEqual([]);
});

test('a day of which no rack takes anything says so, and is not taken for one that was lifted', async () => {
  const forBenchAlone = whole.rack.map((rack) => ({ ...rack, lifts: ['bench' as const] }));
  const { near } = await club(undefined, null, forBenchAlone);
  const without = (await near('lifter-lars', next)).filter(({ works }) => works.length === 0);
  expect(without.length).toBeGreaterThan(0);
  for (const { noRack } of without) expect(noRack).not.toEqual([]);
});

test('the weeks ahead of a lifter are ranges that widen, up to the last meet', async () => {
  const { get, ask } = await club();
  const ahead: StrengthAhead = strengthAhead.parse((await get('lifter-lars/ahead')).json);
  const { plan } = (await ask('GET', '/api/seasons/season-early/plan')).json;
  expect(ahead.lifts.map(({ lift }) => lift).sort()).toEqual(['bench', 'deadlift', 'squat']);
  for (const { weeks } of ahead.lifts) {
    expect(weeks[0]!.monday).toBe(mondayOf(today));
    expect(weeks.at(-1)!.monday).toBe(mondayOf(plan.plans[0].meets.at(-1).date));
    const wide = weeks.map(({ lowKg, highKg }) => highKg / lowKg);
    expect(wide.at(-1)).toBeGreaterThan(wide[0]!);
    expect(wide[0]).toBeGreaterThan(1);
    // More can be held at lockout than goes all the way up: heavy partials rest on it. Common practice, no source.
    for (const { held, lowKg, highKg } of weeks) {
      expect(held!.lockout.lowKg).toBeGreaterThan(lowKg);
      expect(held!.lockout.highKg).toBeGreaterThan(highKg);
    }
  }
});

test('a day that is none and a lifter who is not in the season are refused', async () => {
  const { get } = await club();
  expect(await get('lifter-lars/days/2026-13-01')).toMatchObject({ status: 400 });
  expect(await get('lifter-dragan/ahead')).toMatchObject({
    status: 404,
    json: { error: { field: 'lifterId' } },
  });
});
