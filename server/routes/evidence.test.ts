import { expect, test } from 'vitest';
import { evidenceReport } from '#contract/evidence/evidenceReport.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

test('an empty log is answered with every question and no effect', async () => {
  const { ask } = await testApp(smallClub());
  const { status, json } = await ask('GET', '/api/evidence');
  expect(status).toBe(200);
  const { answers } = evidenceReport.parse(json);
  expect(new Set(answers.map(({ question }) => question)).size).toBe(5);
  expect(answers.flatMap(({ lines }) => lines).every(({ effect }) => effect === null)).toBe(true);
});

test('a set that is logged counts at once, also when its bands were removed since', async () => {
  const { ask, store } = await testApp(smallClub());
  expect((await ask('GET', '/api/evidence')).json.sets).toBe(0);
  await store.logSets([squatSet({ repsInReserve: 1 })]);
  expect((await ask('GET', '/api/evidence')).json).toMatchObject({ sets: 1, to: '2026-11-20' });
  await store.remove('day', 'day-1');
  await store.remove('best', 'best-1');
  await store.remove('bandPair', 'pair-1');
  const { json } = await ask('GET', '/api/evidence');
  const heights = json.answers.find(({ question }: { question: string }) => question === 'boxHeight');
  expect(heights.lines[0].observations).toBe(1);
});

test('a lifter that the club does not have is refused', async () => {
  const { ask } = await testApp(smallClub());
  expect(await ask('GET', '/api/evidence?lifterId=nobody')).toMatchObject({
    status: 404,
    json: { error: { field: 'lifterId' } },
  });
});
