import { expect, test } from 'vitest';
import { backtestReport } from '#contract/projection/backtestReport.ts';
import { liftProjection } from '#contract/projection/liftProjection.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

/** Ahead wherever the club's clocks stand. */
const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const address = (query: string) => `/api/projection?lifterId=lifter-1&${query}`;

test('a meet ahead is told by its middle, by chances that fall with the bar, and by what the club alone says', async () => {
  const { ask, store } = await testApp(smallClub());
  await store.logSets([squatSet()]);
  const { status, json } = await ask('GET', address(`on=${inDays(30)}`));
  expect(status).toBe(200);
  const [squat] = liftProjection.array().parse(json.projections);
  const chances = squat!.chances.map(({ chance }) => chance);
  expect(chances).toEqual([...chances].sort((a, b) => b - a));
  expect(chances[0]).toBeGreaterThan(0.9);
  expect(squat).toMatchObject({ meets: 0, rule: null, taperShare: 0, equipment: 'raw' });

  const { json: tapered } = await ask('GET', address(`on=${inDays(30)}&taperPercent=2`));
  expect(tapered.projections[0].maxKg.median).toBeGreaterThan(squat!.maxKg.median);
});

test('a meet that is past, too far or of nobody is refused with what is allowed', async () => {
  const { ask } = await testApp(smallClub());
  for (const on of [inDays(-3), inDays(400)])
    expect(await ask('GET', address(`on=${on}`))).toMatchObject({
      status: 400,
      json: { error: { field: 'on' } },
    });
  expect((await ask('GET', address(`on=${inDays(9)}&taperPercent=50`))).json.error.field).toBe(
    'taperPercent',
  );
  expect((await ask('GET', address(`on=${inDays(9)}&equipment=armour`))).json.error.field).toBe('equipment');
  expect((await ask('GET', `/api/projection?lifterId=nobody&on=${inDays(9)}`)).status).toBe(404);
});

test('past meets are foretold behind the screens, kept while nothing they rest on changes, and anew after', async () => {
  const { ask, store } = await testApp(smallClub());
  await store.logSets([squatSet(), squatSet({ doneOn: '2026-11-22', platform: true, reps: 1, made: 1 })]);
  const finished = async () => {
    for (;;) {
      const { json } = await ask('GET', '/api/backtest');
      if (json.upToDate) return backtestReport.parse(json.report);
      // Everything runs in this thread, which must get to read the code of the work.
      await new Promise((resolve) => setImmediate(resolve));
    }
  };
  const first = await finished();
  expect(first.lifts.map(({ on, setCount }) => [on, setCount])).toEqual([['2026-11-22', 2]]);
  const { id, ...day } = smallClub().day[0]!;
  await store.create('day', { ...day, title: id });
  expect((await ask('GET', '/api/backtest')).json.upToDate).toBe(true);
  await store.logSets([squatSet({ doneOn: '2026-11-23', platform: true, reps: 1, made: 0 })]);
  const done = (await ask('GET', '/api/backtest')).json;
  expect(done).toMatchObject({ upToDate: false, report: { meets: 1 } });
  expect(Date.parse(done.workedOutAt)).not.toBeNaN();
  expect((await finished()).meets).toBe(2);
});
