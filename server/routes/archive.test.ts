import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

test('an archive takes the place of a whole club only when asked to', async () => {
  const from = await testApp(smallClub());
  const text = await (await from.app.request('/api/archive')).text();
  const into = await testApp();
  const before = await into.store.records();
  expect(await into.ask('POST', '/api/archive', text)).toMatchObject({
    status: 400,
    json: { error: { field: 'replace' } },
  });
  expect(await into.store.records()).toEqual(before);
  const { status, json } = await into.ask('POST', '/api/archive?replace=1', text);
  expect(status).toBe(200);
  expect(json.keptAs).toContain(into.folder);
  expect(await (await into.app.request('/api/archive')).text()).toBe(text);
});

test('what is no archive is refused', async () => {
  const { ask, store } = await testApp(smallClub());
  const answer = await ask('POST', '/api/archive?replace=1', { format: 'something else' });
  expect(answer).toMatchObject({ status: 400, json: { error: { field: 'format' } } });
  expect((await store.records()).records).toEqual(smallClub());
});
