import { setImmediate as othersFirst } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { capacityReport } from '#contract/strength/capacityReport.ts';
import { strengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { estimateProgress, strengthSummary } from '#contract/strength/strengthSummary.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

const address = '/api/estimates?lifterId=lifter-1&on=2026-11-25';

test('a lifter is estimated from the log and the bests, each lift that something is known of', async () => {
  const { ask, store } = await testApp(smallClub());
  await store.logSets([squatSet(), squatSet({ lift: 'deadlift', setup: straight(100) })]);
  const { status, json } = await ask('GET', address);
  expect(status).toBe(200);
  const [squat, deadlift, ...others] = strengthEstimate.array().parse(json.estimates);
  expect(others).toEqual([]);
  expect([squat?.lift, deadlift?.lift]).toEqual(['squat', 'deadlift']);
  expect(deadlift).toMatchObject({ setCount: 1, lastSetOn: '2026-11-20' });
  // Two reps with 100 kg were made: one with less would not be believed.
  expect(deadlift!.maxKg.median).toBeGreaterThan(100);
});

test('one lift can be asked for alone; one of which nothing is known has no estimate', async () => {
  const { ask, store } = await testApp(smallClub());
  await store.logSets([squatSet({ lift: 'deadlift', setup: straight(100) })]);
  const all = (await ask('GET', address)).json.estimates;
  const alone = async (lift: string) => (await ask('GET', `${address}&lift=${lift}`)).json.estimates;
  expect(all).toHaveLength(2);
  expect(await alone('squat')).toEqual([all[0]]);
  expect(await alone('deadlift')).toEqual([all[1]]);
  expect(await alone('bench')).toEqual([]);
  expect(await ask('GET', `${address}&lift=clean`)).toMatchObject({
    status: 400,
    json: { error: { field: 'lift' } },
  });
});

test('a set that is logged, struck or restored counts at once, and a day before it does not know it', async () => {
  const { ask } = await testApp(smallClub());
  const deadlift = squatSet({ lift: 'deadlift', setup: straight(140) });
  const ofDeadlift = async (on: string) => {
    const { json } = await ask('GET', `/api/estimates?lifterId=lifter-1&on=${on}`);
    return json.estimates.find(({ lift }: { lift: string }) => lift === 'deadlift');
  };
  expect(await ofDeadlift('2026-11-25')).toBeUndefined();
  await ask('POST', '/api/sets', { sets: [deadlift] });
  const one = await ofDeadlift('2026-11-25');
  expect(one.setCount).toBe(1);
  const more = { ...deadlift, doneOn: '2026-11-22', setup: straight(170) };
  const { json } = await ask('POST', '/api/sets', { sets: [more] });
  const two = await ofDeadlift('2026-11-25');
  expect(two.setCount).toBe(2);
  expect(two.maxKg.median).toBeGreaterThan(one.maxKg.median);
  await ask('POST', `/api/sets/${json.sets[0].id}/strike`);
  expect(await ofDeadlift('2026-11-25')).toEqual(one);
  await ask('POST', `/api/sets/${json.sets[0].id}/restore`);
  expect(await ofDeadlift('2026-11-25')).toEqual(two);
  expect((await ofDeadlift('2026-11-21')).setCount).toBe(1);
});

test('a change of what the lifter weighs counts at once', async () => {
  const { ask } = await testApp(smallClub());
  const before = (await ask('GET', address)).json.estimates[0];
  expect(before.bodyMassKg).toBe(51.3);
  await ask('POST', '/api/records/bodyMass', { lifterId: 'lifter-1', takenOn: '2026-11-24', massKg: 54 });
  expect((await ask('GET', address)).json.estimates[0].bodyMassKg).toBe(54);
});

test('a set counts also when its bands were removed since', async () => {
  const { ask, store } = await testApp(smallClub());
  await store.logSets([squatSet()]);
  await store.remove('day', 'day-1');
  await store.remove('best', 'best-1');
  await store.remove('bandPair', 'pair-1');
  expect((await ask('GET', address)).json.estimates[0]).toMatchObject({ setCount: 1, leftOut: [] });
});

test('the whole club comes in short, worked out behind the screen, and follows the log', async () => {
  const { ask, store } = await testApp(smallClub());
  const first = await ask('GET', '/api/estimates/all');
  expect(first).toMatchObject({ status: 200, json: { estimates: [], progress: { running: true } } });
  const untilDone = async () => {
    for (;;) {
      const progress = estimateProgress.parse((await ask('GET', '/api/estimates/progress')).json);
      if (!progress.running) return progress;
      // Questions of a test come without a socket: nothing else would have its turn.
      await othersFirst();
    }
  };
  const { done, total } = await untilDone();
  expect(done).toBe(total);
  const known = (await ask('GET', '/api/estimates/all')).json;
  expect(known.progress.running).toBe(false);
  const [squat] = strengthSummary.array().parse(known.estimates);
  expect(squat).toMatchObject({ lifterId: 'lifter-1', lift: 'squat', setCount: 1, upToDate: true });

  await store.logSets([squatSet({ setup: straight(150) })]);
  const stale = (await ask('GET', '/api/estimates/all')).json;
  expect(stale).toMatchObject({ progress: { running: true }, estimates: [{ ...squat, upToDate: false }] });
  await untilDone();
  const fresh = (await ask('GET', '/api/estimates/all')).json.estimates[0];
  expect(fresh).toMatchObject({ setCount: 2, lastSetOn: '2026-11-20', upToDate: true });
  const inFull = (await ask('GET', `/api/estimates?lifterId=lifter-1`)).json.estimates[0];
  expect(fresh.maxKg).toEqual(inFull.maxKg);
});

test('work capacity is followed over twelve weeks each, and a stretch whose sets tell too little says so', async () => {
  const { ask, store } = await testApp(smallClub());
  const several = { setup: straight(110), reps: 6, made: 6, repsInReserve: 2 };
  const days = ['2026-10-02', '2026-10-09', '2026-10-16', '2026-10-23', '2026-10-30', '2026-11-06'];
  await store.logSets([
    squatSet({ ...several, doneOn: '2026-07-30' }),
    ...days.flatMap((doneOn) => [
      squatSet({ ...several, doneOn }),
      squatSet({ setup: straight(140), doneOn }),
    ]),
  ]);
  const { status, json } = await ask('GET', '/api/estimates/capacity?lifterId=lifter-1&lift=squat');
  expect(status).toBe(200);
  const { stretches, better, change } = capacityReport.parse(json);
  // Eighty-four days end with the newest set.
  expect(stretches.map(({ from, to }) => [from, to])).toEqual([
    ['2026-05-23', '2026-08-14'],
    ['2026-08-15', '2026-11-06'],
  ]);
  const [early, late] = stretches;
  expect(early).toMatchObject({ setsThatTell: 1, told: null });
  expect(late!.told!.reps.map(({ share }) => share)).toEqual([0.9, 0.8]);
  const [heavy, lighter] = late!.told!.reps;
  expect(heavy!.belief.median).toBeLessThan(lighter!.belief.median);
  expect([better, change]).toEqual([null, 'cannotTell']);
});

test.each([
  ['nobody', 'lift=squat', 400, 'lifterId'],
  ['a stranger', 'lifterId=x&lift=squat', 404, 'lifterId'],
  ['no lift', 'lifterId=lifter-1', 400, 'lift'],
  ['a lift that is none', 'lifterId=lifter-1&lift=curl', 400, 'lift'],
  ['a lift of which nothing is logged', 'lifterId=lifter-1&lift=bench', 404, 'lift'],
] as const)('work capacity of %s is refused with one sentence', async (_what, query, status, field) => {
  const { ask } = await testApp(smallClub());
  const answer = await ask('GET', `/api/estimates/capacity?${query}`);
  expect(answer).toMatchObject({ status, json: { error: { field } } });
  expect(answer.json.error.message).toMatch(/^[^.].*\.$/s);
});

test('a day is solved by what the log says of its lifters', async () => {
  const { ask, store } = await testApp(smallClub());
  const before = (await ask('POST', '/api/days/day-1/solve')).json.document;
  await store.logSets([squatSet({ setup: straight(190) })]);
  const after = (await ask('POST', '/api/days/day-1/solve')).json.document;
  expect(firstStrength(before)).toMatchObject({ setCount: 1 });
  expect(firstStrength(after)).toMatchObject({ setCount: 2 });
});

test.each([
  ['nobody', '/api/estimates', 400, 'lifterId'],
  ['a stranger', '/api/estimates?lifterId=x', 404, 'lifterId'],
  ['a date that is none', '/api/estimates?lifterId=lifter-1&on=today', 400, 'on'],
  ['a day that no calendar has', '/api/estimates?lifterId=lifter-1&on=2026-02-30', 400, 'on'],
  ['a day of which nothing can be said', '/api/estimates?lifterId=lifter-1&on=2099-01-01', 400, 'on'],
] as const)('%s is refused with one sentence', async (_who, path, status, field) => {
  const { ask } = await testApp(smallClub());
  const answer = await ask('GET', path);
  expect(answer).toMatchObject({ status, json: { error: { field } } });
  expect(answer.json.error.message).toMatch(/^[^.].*\.$/s);
});

function straight(barKg: number) {
  return { rackId: null, start: { way: 'free', heightM: null }, barKg, bands: [], chains: [] };
}

function firstStrength(plan: { groups: { places: { solved: { strength: object } }[] }[] }) {
  return plan.groups[0]!.places[0]!.solved.strength;
}
