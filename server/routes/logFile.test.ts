import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

const header = 'date,lifter,lift,weight kg,reps';
const text = `${header}\n2026-01-13,Ida Quill,squat,100,5\n2026-01-20,Ida Quill,bench,60,3\n`;

test('a file is looked at first, then taken, and not taken twice; one undo strikes it all', async () => {
  const { ask, store } = await testApp(smallClub());
  const found = {
    rows: 2,
    added: 2,
    alreadyThere: 0,
    problems: [],
    problemCount: 0,
    headers: header.split(','),
    suggested: { date: 'date', lifter: 'lifter', lift: 'lift', bar: 'weight kg', reps: 'reps' },
    notTaken: [],
    units: { bar: 'kg' },
    readAs: [],
    firstOn: '2026-01-13',
    lastOn: '2026-01-20',
    lifters: ['Ida Quill'],
  };
  const dry = await ask('POST', '/api/sets/import', { text, columns: null, dryRun: true });
  expect(dry).toEqual({ status: 200, json: { ...found, dryRun: true, seq: 1 } });
  expect(await store.loggedSets()).toEqual([]);

  const columns = found.suggested;
  const taken = await ask('POST', '/api/sets/import', { text, columns, dryRun: false });
  expect(taken).toEqual({ status: 200, json: { ...found, dryRun: false, seq: 2 } });
  expect((await store.loggedSets()).map(({ setup }) => setup.barKg)).toEqual([100, 60]);
  const again = await ask('POST', '/api/sets/import', { text });
  expect(again.json).toMatchObject({ added: 0, alreadyThere: 2, seq: 2 });

  await ask('POST', '/api/undo/2');
  expect((await store.loggedSets()).map(({ struckAt }) => struckAt === null)).toEqual([false, false]);
  // What was struck as a mistake does not come back with the file.
  expect((await ask('POST', '/api/sets/import', { text })).json).toMatchObject({ added: 0, alreadyThere: 2 });
});

test('a file with a wrong line is refused whole; the first fifty wrong places are told', async () => {
  const { ask, store } = await testApp(smallClub());
  const wrong = Array.from({ length: 60 }, (_, i) => `2026-01-13,Lifter ${i},squat,100,5`).join('\n');
  const refused = await ask('POST', '/api/sets/import', { text: `${text}${wrong}\n` });
  expect(refused.status).toBe(400);
  expect(refused.json).toMatchObject({
    error: { field: 'line 4, lifter' },
    rows: 62,
    added: 0,
    problemCount: 60,
  });
  expect(refused.json.problems).toHaveLength(50);
  expect(refused.json.problems[0]).toMatchObject({ line: 4, column: 'lifter' });
  expect(await store.loggedSets()).toEqual([]);
  const dry = await ask('POST', '/api/sets/import', { text: `${text}${wrong}\n`, dryRun: true });
  expect(dry).toMatchObject({ status: 200, json: { added: 0, problemCount: 60 } });
  for (const [body, start] of [
    [{}, 'text is missing; '],
    [{ text: 1 }, 'text is 1; '],
    [{ text, columns: [] }, 'columns is []; '],
    [{ text, dryRun: 'yes' }, 'dryRun is "yes"; '],
    [{ text, dryrun: true }, 'dryrun is not a field that is known here; '],
  ] as const) {
    const answer = await ask('POST', '/api/sets/import', body);
    expect(answer.status).toBe(400);
    expect(answer.json.error.message).toContain(start);
  }
});

test('a part of the log is written as a file by the same fields as it is read', async () => {
  const { app, store } = await testApp(smallClub());
  const days = ['2026-11-18', '2026-11-19', '2026-11-20'];
  await store.logSets(days.map((doneOn) => squatSet({ doneOn })));
  const file = await app.request('/api/sets/csv?lifterId=lifter-1&from=2026-11-19&to=2026-11-19');
  const [, ...lines] = (await file.text()).trim().split('\n');
  expect(lines.map((line) => line.slice(0, days[0]!.length))).toEqual(['2026-11-19']);
});

test('the file of one club makes the same log in another; gear of old keeps its label in it', async () => {
  const from = await testApp(smallClub());
  const spoken = {
    made: 1,
    reps: 3,
    stoppedAtS: 0.25,
    meanSpeedsMps: [0.31],
    note: 'slow; "grind"',
    platform: true,
  };
  await from.store.logSets([squatSet(spoken), squatSet({ order: 5 })]);
  const file = await from.app.request('/api/sets/csv');
  expect(file.headers.get('content-type')).toBe('text/csv; charset=utf-8');
  const csv = await file.text();
  expect(csv).toContain(',Wide 1 @ doubled low @ Window rack,1 x Heavy,');

  const into = await testApp(smallClub());
  await into.ask('POST', '/api/sets/import', { text: csv });
  const [here, there] = [await from.store.loggedSets(), await into.store.loggedSets()];
  expect(there.map((set) => ({ ...set, id: '', loggedAt: '' }))).toEqual(
    here.map((set) => ({ ...set, id: '', loggedAt: '' })),
  );

  await into.store.remove('day', 'day-1');
  await into.store.remove('best', 'best-1');
  await into.store.remove('bandPair', 'pair-1');
  expect(await (await into.app.request('/api/sets/csv')).text()).toBe(csv);
});
