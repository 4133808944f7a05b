import { expect, test } from 'vitest';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

const club = smallClub();
const lifterIds = club.lifter.map(({ id }) => id);
const asked = {
  title: 'Spring',
  fromOn: '2027-01-04',
  method: { document: shippedMethods[3] },
  newMeets: [{ title: 'Regional', date: '2027-05-08' }],
  lifterIds,
};

test('a new season brings its method, its meet and everybody, and one undo takes all of it back', async () => {
  const { ask } = await testApp(smallClub());
  const before = (await ask('GET', '/api/club')).json.records;
  const { status, json } = await ask('POST', '/api/seasons', asked);
  expect(status).toBe(201);
  const { records } = (await ask('GET', '/api/club')).json;
  const season = records.season.find(({ id }: { id: string }) => id === json.seasonId);
  const meet = records.meet.find(({ title }: { title: string }) => title === 'Regional');
  const entries = records.seasonEntry.filter((one: { seasonId: string }) => one.seasonId === season.id);
  expect(entries.map((one: { lifterId: string }) => one.lifterId).sort()).toEqual([...lifterIds].sort());
  expect(entries.every((one: { meetIds: string[] }) => one.meetIds.join() === meet.id)).toBe(true);
  const method = records.method.find(({ id }: { id: string }) => id === season.methodId);
  expect(method.methodDocument).toEqual(shippedMethods[3]);
  await ask('POST', `/api/undo/${json.seq}`);
  expect((await ask('GET', '/api/club')).json.records).toEqual(before);
});

test('of a season with somebody who is not in the club nothing is made', async () => {
  const { ask } = await testApp(smallClub());
  const before = (await ask('GET', '/api/club')).json.records;
  const { status, json } = await ask('POST', '/api/seasons', {
    ...asked,
    lifterIds: [...lifterIds, 'nobody'],
  });
  expect(status).toBe(400);
  expect(json.error.message).toContain('"nobody"');
  expect((await ask('GET', '/api/club')).json.records).toEqual(before);
});
