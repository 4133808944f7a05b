import { expect, test } from 'vitest';
import { keptCopies } from '#contract/archive/keptCopy.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

const pathOf = (name: string) => `/api/copies/${encodeURIComponent(name)}`;

test('a snapshot is taken, listed, looked into, downloaded, put in the place of the club and removed', async () => {
  const { app, ask, store } = await testApp(smallClub());
  const archive = async () => (await app.request('/api/archive')).text();
  const before = await archive();
  const taken = await ask('POST', '/api/copies');
  expect(taken).toMatchObject({ status: 201, json: { kind: 'snapshot' } });
  const path = pathOf(taken.json.name);
  await store.create('bar', { label: 'Later', massKg: 20 });
  expect(keptCopies.parse((await ask('GET', '/api/copies')).json)).toMatchObject({
    copies: [taken.json],
    fault: null,
  });
  const bars = smallClub().bar.length;
  expect((await ask('GET', `${path}/look`)).json).toMatchObject({
    archive: { name: 'Quarry Lane', counts: { bar: bars } },
    here: { name: 'Quarry Lane', counts: { bar: bars + 1 } },
  });
  const download = await app.request(path);
  expect(await download.text()).toBe(before);
  // To mark it, all of it would be held in memory before its first byte is sent.
  expect(download.headers.get('etag')).toBeNull();
  expect(download.headers.get('content-disposition')).toMatch(/^attachment; filename="[\w.-]+\.json"$/);

  const later = await archive();
  expect((await ask('POST', `${path}/restore`)).status).toBe(200);
  expect(await archive()).toBe(before);
  const [replaced] = keptCopies.parse((await ask('GET', '/api/copies')).json).copies;
  expect(replaced!.kind).toBe('replaced');
  expect(await (await app.request(pathOf(replaced!.name))).text()).toBe(later);
  expect((await app.request(path, { method: 'DELETE' })).status).toBe(204);
  expect((await ask('GET', '/api/copies')).json.copies).toEqual([replaced]);
});

test.each([
  ['GET', ''],
  ['GET', '/look'],
  ['POST', '/restore'],
  ['DELETE', ''],
])('%s%s of what is no copy is refused: no file but a copy is reached', async (method, more) => {
  const { ask } = await testApp(smallClub());
  for (const name of ['none', '../club.sqlite', 'club.sqlite', '..%2fclub.sqlite']) {
    const answer = await ask(method, `${pathOf(name)}${more}`);
    expect(answer).toMatchObject({ status: 404, json: { error: { field: 'name' } } });
  }
});
