import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

/** What RFC 9110, 13.1.2 asks of a server: a list of marks, weak ones compared as if they were strong. */
test.each<[string, (mark: string) => string]>([
  ['its mark', (mark) => mark],
  ['its mark, made weak', (mark) => `W/${mark}`],
  ['its mark among others', (mark) => `"other", ${mark}`],
])('an answer that the reader has, told by %s, is not sent again', async (_how, named) => {
  const { app } = await testApp(smallClub());
  for (const path of ['/api/club', '/api/sets', '/api/changes', '/api/openapi.json']) {
    const first = await app.request(path);
    const mark = first.headers.get('etag')!;
    const again = await app.request(path, { headers: { 'if-none-match': named(mark) } });
    expect([again.status, again.headers.get('etag'), await again.text()]).toEqual([304, mark, '']);
    expect(again.headers.get('content-type')).toBeNull();
  }
});

test('an answer that became another, or that the reader never had, is sent', async () => {
  const { app, store } = await testApp(smallClub());
  const first = await app.request('/api/sets');
  await store.logSets([squatSet()]);
  for (const mark of [first.headers.get('etag')!, '"other"', 'no mark']) {
    const again = await app.request('/api/sets', { headers: { 'if-none-match': mark } });
    expect(again.status).toBe(200);
    expect(again.headers.get('content-type')).toBe('application/json');
    expect(await again.json()).toMatchObject({ sets: [{ order: 1 }] });
  }
});
