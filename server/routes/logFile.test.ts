import { describe, expect, test } from 'vitest';
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
    slips: [],
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
    [
      { text, slips: { 'lifter-1 squat pounds': 'perhaps' } },
      'In slips: lifter-1 squat pounds is "perhaps"; ',
    ],
    [{ text, slips: { 'lifter-1 squat pounds': 'leftOut' } }, 'slips names "lifter-1 squat pounds", '],
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

/** Exact: NIST SP 811. */
const KG_PER_LB = 0.45359237;
/** Sixteen weeks of fives; in the tenth to the twelfth pounds were written down as kilograms. */
const fives = Array.from({ length: 16 }, (_, week) => {
  const day = new Date(Date.UTC(2026, 0, 6 + 7 * week)).toISOString().slice(0, 10);
  return { day, isPounds: week >= 9 && week < 12, bars: [60, 80, 100] };
});
const linesOf = (weeks: typeof fives) =>
  weeks.flatMap(({ day, isPounds, bars }) =>
    bars.map((kg) => `${day},Ida Quill,squat,${isPounds ? kg / KG_PER_LB : kg},5\n`),
  );
const slippedText = `${header}\n${linesOf(fives).join('')}`;
const key = 'lifter-1 squat pounds';

describe('sets of a file that look like pounds', () => {
  test('are named before anything is taken, and their bars as written and as meant', async () => {
    const { ask, store } = await testApp(smallClub());
    const { json } = await ask('POST', '/api/sets/import', { text: slippedText, dryRun: true });
    expect(json).toMatchObject({ added: 48, problemCount: 0 });
    const { bars, ...slip } = json.slips[0];
    expect(json.slips).toHaveLength(1);
    expect(slip).toEqual({
      key,
      lifter: 'Ida Quill',
      lift: 'squat',
      looksLike: 'pounds',
      setCount: 9,
      firstOn: '2026-03-10',
      lastOn: '2026-03-24',
    });
    [60, 80, 100].forEach((kg, i) => {
      expect(bars[i].writtenKg).toBeCloseTo(kg / KG_PER_LB, 9);
      expect(bars[i].meantKg).toBeCloseTo(kg, 9);
      expect(bars[i].sets).toBe(3);
    });
    expect(await store.loggedSets()).toEqual([]);
  });

  test.each([
    ['asWritten', 48, 220.46, 0],
    ['checked', 48, 220.46, 9],
    ['asMeant', 48, 100, 0],
    ['leftOut', 39, 100, 0],
  ] as const)(
    'are %s all of them, one undo takes the whole file back',
    async (taking, count, heaviestKg, right) => {
      const { ask, store } = await testApp(smallClub());
      const body = { text: slippedText, slips: { [key]: taking } };
      expect((await ask('POST', '/api/sets/import', body)).json).toMatchObject({ added: count, seq: 2 });
      const log = await store.loggedSets();
      expect(log).toHaveLength(count);
      expect(Math.max(...log.map(({ setup }) => setup.barKg))).toBeCloseTo(heaviestKg, 2);
      expect(log.filter(({ barChecked }) => barChecked)).toHaveLength(right);
      await ask('POST', '/api/undo/2');
      expect((await store.loggedSets()).every(({ struckAt }) => struckAt !== null)).toBe(true);
    },
  );

  test('are seen by what the log knows of the lifter, and not taken again once they were taken as meant', async () => {
    const { ask } = await testApp(smallClub());
    const right = fives.filter(({ isPounds }) => !isPounds);
    await ask('POST', '/api/sets/import', { text: `${header}\n${linesOf(right).join('')}` });
    const pounds = `${header}\n${linesOf(fives.filter(({ isPounds }) => isPounds)).join('')}`;
    const dry = await ask('POST', '/api/sets/import', { text: pounds, dryRun: true });
    expect(dry.json).toMatchObject({ added: 9, slips: [{ key, setCount: 9 }] });
    await ask('POST', '/api/sets/import', { text: pounds, slips: { [key]: 'asMeant' } });
    for (const text of [pounds, slippedText])
      expect((await ask('POST', '/api/sets/import', { text, dryRun: true })).json).toMatchObject({
        added: 0,
        slips: [],
      });
  });
});
