import { expect, onTestFinished, test, vi } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { requestAgain } from './request.ts';

const read = () => requestAgain<{ records: unknown[] }>('/api/records/disc');

test('what has not changed is not sent again, and what has is', async () => {
  const { app, store } = await testApp(smallClub());
  const sizes: number[] = [];
  vi.stubGlobal('fetch', async (path: string, options: RequestInit) => {
    const answer = await app.request(path, options);
    sizes.push((await answer.clone().text()).length);
    return answer;
  });
  onTestFinished(() => void vi.unstubAllGlobals());
  const first = await read();
  expect(first).toEqual({ records: smallClub().disc });
  await store.create('bar', { label: 'Another', massKg: 20 });
  expect(await read()).toBe(first);
  const { record } = await store.create('disc', { faceMassKg: 5, pairs: 1 });
  // The id that the store made sorts before that of the small club's disc.
  expect(await read()).toEqual({ records: [record, ...smallClub().disc] });
  expect(sizes).toEqual([JSON.stringify(first).length, 0, JSON.stringify(await read()).length, 0]);
});
