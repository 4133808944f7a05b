import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

test('sets are logged, read, narrowed, struck, restored and undone', async () => {
  const { ask } = await testApp(smallClub());
  const logged = await ask('POST', '/api/sets', { sets: [squatSet(), squatSet({ doneOn: '2026-11-21' })] });
  expect(logged).toMatchObject({ status: 201, json: { seq: 2 } });
  const { sets } = logged.json;
  expect(await ask('GET', '/api/sets')).toEqual({
    status: 200,
    json: { sets, formerLabels: {}, next: null },
  });
  const later = await ask('GET', '/api/sets?lifterId=lifter-1&from=2026-11-21&to=2026-11-30');
  expect(later.json.sets).toEqual([sets[1]]);

  const struck = await ask('POST', `/api/sets/${sets[0].id}/strike`);
  expect(struck).toEqual({ status: 200, json: { seq: 3 } });
  expect((await ask('GET', '/api/sets')).json.sets[0].struckAt).not.toBeNull();
  expect((await ask('POST', `/api/sets/${sets[0].id}/strike`)).status).toBe(409);
  expect(await ask('POST', `/api/sets/${sets[0].id}/restore`)).toEqual({ status: 200, json: { seq: 4 } });
  expect(await ask('POST', '/api/undo/4')).toEqual({ status: 200, json: { seq: 5 } });
  expect((await ask('GET', '/api/sets')).json.sets[0].struckAt).not.toBeNull();
  expect((await ask('GET', '/api/sets/band-reps')).json).toEqual({
    bandReps: [{ bandPairId: 'pair-1', doneOn: '2026-11-21', reps: 2 }],
  });
});

test('a set is corrected in one step, by the same rules as a new one', async () => {
  const { ask } = await testApp(smallClub());
  const { sets } = (await ask('POST', '/api/sets', { sets: [squatSet()] })).json;
  const path = `/api/sets/${sets[0].id}/correct`;
  const refused = await ask('POST', path, squatSet({ made: 5 }));
  expect(refused).toMatchObject({ status: 400, json: { error: { field: 'made' } } });
  expect((await ask('GET', '/api/sets')).json.sets).toEqual(sets);
  const corrected = await ask('POST', path, squatSet({ reps: 5, made: 5 }));
  expect(corrected).toMatchObject({ status: 200, json: { seq: 3, set: { reps: 5, order: 1 } } });
  const again = await ask('POST', path, squatSet());
  expect(again).toMatchObject({ status: 409, json: { error: { field: 'id' } } });
  expect(again.json.error.message).toMatch(/^[^.].*\.$/s);
  expect(await ask('POST', '/api/undo/3')).toEqual({ status: 200, json: { seq: 4 } });
  expect((await ask('POST', path, squatSet())).status).toBe(200);
  expect((await ask('POST', '/api/sets/x/correct', squatSet())).status).toBe(404);
});

test('many sets are corrected or struck as one change, all of them or none, and one undo takes it back', async () => {
  const { ask, store } = await testApp(smallClub());
  const { sets } = (await ask('POST', '/api/sets', { sets: [squatSet(), squatSet(), squatSet()] })).json;
  const [a, b, c] = sets.map(({ id }: { id: string }) => id);
  const correct = (corrections: unknown) => ask('POST', '/api/sets/correct', { corrections });
  const before = await store.loggedSets();
  for (const [corrections, status, field] of [
    [
      [
        { id: a, set: squatSet({ made: 1 }) },
        { id: b, set: squatSet({ made: 5 }) },
      ],
      400,
      'made',
    ],
    [
      [
        { id: a, set: null },
        { id: a, set: null },
      ],
      409,
      'id',
    ],
    [
      [
        { id: a, set: null },
        { id: 'x', set: null },
      ],
      404,
      'id',
    ],
    [[], 400, 'corrections'],
    [[{ id: a }], 400, 'corrections[0].set'],
  ] as const) {
    expect(await correct(corrections)).toMatchObject({ status, json: { error: { field } } });
    expect(await store.loggedSets()).toEqual(before);
  }
  const one = await correct([
    { id: a, set: squatSet({ made: 1 }) },
    { id: b, set: null },
  ]);
  expect(one).toMatchObject({ status: 200, json: { seq: 3, sets: [{ made: 1, order: 1 }] } });
  const counting = async () => (await store.loggedSets()).filter(({ struckAt }) => struckAt === null);
  expect((await counting()).map(({ id }) => id)).toEqual([one.json.sets[0].id, c]);
  await ask('POST', '/api/undo/3');
  expect((await counting()).map(({ id }) => id)).toEqual([a, b, c]);
});

test('a set of a day that is still to come is refused, however it comes; one of today is taken', async () => {
  const { ask, store } = await testApp(smallClub());
  const today = new Date().toISOString().slice(0, 10);
  const ahead = squatSet({ doneOn: '2999-01-01' });
  const logged = await ask('POST', '/api/sets', { sets: [squatSet({ doneOn: today })] });
  expect(logged.status).toBe(201);
  const before = await store.loggedSets();
  const both = await ask('POST', '/api/sets', { sets: [squatSet(), ahead] });
  expect(both).toMatchObject({ status: 400, json: { error: { field: 'sets[1].doneOn' } } });
  expect(both.json.error.message).toMatch(/is "2999-01-01"; it must be no later than today, 2\d{3}-/);
  const moved = await ask('POST', `/api/sets/${logged.json.sets[0].id}/correct`, ahead);
  expect(moved).toMatchObject({ status: 400, json: { error: { field: 'doneOn' } } });
  const text = 'date,lifter,lift,bar,reps\n2999-01-01,Ida Quill,squat,100,5\n';
  expect((await ask('POST', '/api/sets/import', { text })).json.error.field).toBe('line 2, date');
  expect(await store.loggedSets()).toEqual(before);
});

test('gear that was removed keeps its label beside the sets that name it', async () => {
  const { ask, store } = await testApp(smallClub());
  await store.logSets([squatSet()]);
  for (const [kind, id] of [
    ['day', 'day-1'],
    ['best', 'best-1'],
    ['bandPair', 'pair-1'],
  ] as const) {
    await store.remove(kind, id);
  }
  expect((await ask('GET', '/api/sets')).json.formerLabels).toEqual({ 'pair-1': 'Wide 1' });
});

test.each([
  ['a wrong field', 'POST', '/api/sets', { sets: [squatSet(), squatSet({ reps: 0 })] }, 400, 'sets[1].reps'],
  [
    'a number of no day',
    'POST',
    '/api/sets',
    { sets: [squatSet({ planNumber: 1 })] },
    400,
    'sets[0].planNumber',
  ],
  [
    'a set that names nobody',
    'POST',
    '/api/sets',
    { sets: [squatSet({ lifterId: 'x' })] },
    400,
    'sets[0].lifterId',
  ],
  ['no list', 'POST', '/api/sets', squatSet(), 400, 'lifterId'],
  ['an empty list', 'POST', '/api/sets', { sets: [] }, 400, 'sets'],
  ['a date that is none', 'GET', '/api/sets?from=yesterday', undefined, 400, 'from'],
  ['an unknown set', 'POST', '/api/sets/x/strike', undefined, 404, 'id'],
] as const)('%s is refused with one sentence', async (_why, method, path, body, status, field) => {
  const { ask, store } = await testApp(smallClub());
  const answer = await ask(method, path, body);
  expect(answer).toMatchObject({ status, json: { error: { field } } });
  expect(answer.json.error.message).toMatch(/^[^.].*\.$/s);
  expect(await store.loggedSets()).toEqual([]);
});

test('the log comes in pages that each say where the next begins, and a place that no page named is refused', async () => {
  const { ask } = await testApp(smallClub());
  const { sets } = (await ask('POST', '/api/sets', { sets: [squatSet(), squatSet(), squatSet()] })).json;
  const first = await ask('GET', '/api/sets?most=2');
  expect(first.json.sets).toEqual(sets.slice(0, 2));
  const rest = await ask('GET', `/api/sets?most=2&after=${encodeURIComponent(first.json.next)}`);
  expect(rest.json).toMatchObject({ sets: sets.slice(2), next: null });
  expect(await ask('GET', '/api/sets?after=2026')).toMatchObject({
    status: 400,
    json: { error: { field: 'after' } },
  });
  expect((await ask('GET', '/api/sets?most=1001')).status).toBe(400);
  expect((await ask('GET', '/api/sets/days?lift=squat')).json).toEqual({
    days: [{ doneOn: '2026-11-20', lifters: 1, sets: 3, missed: 0, struck: 0 }],
    hasOlder: false,
  });
});
