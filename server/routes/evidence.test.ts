import { EventEmitter, once } from 'node:events';
import { expect, test } from 'vitest';
import { type EvidenceReport, evidenceReport } from '#contract/evidence/evidenceReport.ts';
import { createApp } from '#server/app.ts';
import { fakeRun } from '#server/jobs/tests/fakeRun.ts';
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

test('those with a label are weighed alone, whatever its capitals; a label that nobody has is refused', async () => {
  const { ask, store } = await testApp(smallClub());
  const { id, ...lifter } = (await store.list('lifter')).find((one) => one.id === 'lifter-1')!;
  await store.update('lifter', id, { ...lifter, labels: ['Early crew'] });
  const other = await store.create('lifter', { ...lifter, name: 'Somebody else', labels: [] });
  await store.logSets([
    squatSet({ repsInReserve: 1 }),
    squatSet({ repsInReserve: 1, lifterId: other.record.id, doneOn: '2026-10-10' }),
    squatSet({ repsInReserve: 1, lifterId: other.record.id, doneOn: '2026-10-11' }),
  ]);
  const setsOf = async (query: string) => (await ask('GET', `/api/evidence${query}`)).json.sets;
  expect(await setsOf('')).toBe(3);
  expect(await setsOf('?label=early%20CREW')).toBe(1);
  const refused = { error: { field: 'label' } };
  expect(await ask('GET', '/api/evidence?label=late')).toMatchObject({ status: 404, json: refused });
  expect(await ask('GET', `/api/evidence?label=early%20crew&lifterId=${id}`)).toMatchObject({
    status: 400,
    json: refused,
  });
});

test('a lifter that the club does not have is refused', async () => {
  const { ask } = await testApp(smallClub());
  expect(await ask('GET', '/api/evidence?lifterId=nobody')).toMatchObject({
    status: 404,
    json: { error: { field: 'lifterId' } },
  });
});

test('when the last reader has gone the weighing ends, and not before', async () => {
  const { store, webRoot } = await testApp(smallClub());
  const begun: AbortSignal[] = [];
  const began = new EventEmitter();
  const run = fakeRun({
    weighEvidence: (_asked, { signal }) => {
      begun.push(signal!);
      began.emit('run');
      return new Promise<EvidenceReport>((_, reject) => {
        signal!.addEventListener('abort', () => reject(signal!.reason));
      });
    },
  });
  const app = createApp({ store, webRoot, run });
  const readers = [new AbortController(), new AbortController()];
  const firstRun = once(began, 'run');
  const asked = readers.map(({ signal }) => app.request('/api/evidence', { signal }));
  await firstRun;
  readers[0]!.abort();
  expect((await asked[0]!).status).toBe(499);
  expect(begun.map(({ aborted }) => aborted)).toEqual([false]);
  readers[1]!.abort();
  expect((await asked[1]!).status).toBe(499);
  expect(begun.map(({ aborted }) => aborted)).toEqual([true]);
});
