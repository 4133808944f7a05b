import { expect, test } from 'vitest';
import { createApp } from '#server/app.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

test('an answer says up to which change all is in it, and promises none that was made after it was read', async () => {
  const { store, webRoot } = await testApp(smallClub());
  const whileAsked: typeof store = {
    ...store,
    async list(kind) {
      const found = await store.list(kind);
      await store.create('disc', { faceMassKg: 5, pairs: 1 });
      return found;
    },
  };
  const app = createApp({ store: whileAsked, webRoot });
  const standsAt = async (path: string) => (await app.request(path)).headers.get('club-change');
  expect(await standsAt('/api/sets')).toBe('1');
  expect(await standsAt('/api/records/bar')).toBe('1');
  expect(await standsAt('/api/records/bar')).toBe('2');
  expect(await standsAt('/api/sets')).toBe('3');
});
