import { expect, test } from 'vitest';
import { millraceClub } from '#demo/millraceClub.ts';
import { gearAhead } from '#reckon/season/gearAhead.ts';
import { createApp } from '#server/app.ts';
import { fakeRun } from '#server/jobs/tests/fakeRun.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

test('a set that is logged leaves the check of the gear as it is; another rack and a moved meet have it made again', async () => {
  const { store, webRoot } = await testApp(smallClub());
  let runs = 0;
  const run = fakeRun({
    checkGearAhead: async ({ door, today, ...more }) => {
      runs += 1;
      // The club of four hundred lifters is read where it is checked: whoever asks is answered meanwhile.
      expect(more).toEqual({});
      expect({ path: door.path, today }).toEqual({ path: store.path, today: await store.today() });
      return [];
    },
  });
  const app = createApp({ store, webRoot, run });
  const ask = async () => {
    const answer = await app.request('/api/seasons/gear');
    expect(await answer.json()).toEqual({ warnings: [] });
    return runs;
  };
  expect(await ask()).toBe(1);
  await store.logSets([squatSet({})]);
  expect(await ask()).toBe(1);
  const [rack] = await store.list('rack');
  const { id: _, ...fields } = rack!;
  await store.create('rack', { ...fields, label: 'One more' });
  expect(await ask()).toBe(2);
  const [meet] = await store.list('meet');
  const { id, ...old } = meet!;
  await store.update('meet', id, { ...old, date: '2027-06-05' });
  expect(await ask()).toBe(3);
});

test('what is told is what the records as they are kept come to, to the letter', async () => {
  const { ask, store } = await testApp();
  await store.importRecords(millraceClub(await store.today()));
  const { json } = await ask('GET', '/api/seasons/gear');
  const warnings = gearAhead((await store.records()).records, await store.today());
  expect(warnings).not.toEqual([]);
  expect(JSON.stringify(json)).toBe(JSON.stringify({ warnings }));
});

test('a club without seasons has nothing to hold its gear against', async () => {
  const { ask } = await testApp({ ...smallClub(), season: [], seasonEntry: [], plannedByHand: [] });
  expect(await ask('GET', '/api/seasons/gear')).toMatchObject({ status: 200, json: { warnings: [] } });
});
