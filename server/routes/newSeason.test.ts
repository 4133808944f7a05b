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

test('lifters join a season together, and leave it by one undo; where one of them cannot, nobody does', async () => {
  const [first] = club.lifter;
  const others = ['lifter-8', 'lifter-9'];
  const more = others.map((id) => ({ ...first!, id, name: id }));
  const { ask } = await testApp({ ...smallClub(), lifter: [first!, ...more] });
  const { seasonId } = (await ask('POST', '/api/seasons', { ...asked, lifterIds: [first!.id] })).json;
  const inSeason = async () =>
    (await ask('GET', '/api/club')).json.records.seasonEntry
      .filter((one: { seasonId: string }) => one.seasonId === seasonId)
      .map(({ lifterId }: { lifterId: string }) => lifterId);
  const { meet } = (await ask('GET', '/api/club')).json.records;
  const join = (ids: unknown[]) =>
    ask('POST', `/api/seasons/${seasonId}/lifters`, { lifterIds: ids, meetIds: [meet[0].id] });
  const { status, json } = await join(others);
  expect(status).toBe(201);
  expect((await inSeason()).toSorted()).toEqual([first!.id, ...others].toSorted());
  await ask('POST', `/api/undo/${json.seq}`);
  expect(await inSeason()).toEqual([first!.id]);
  expect((await join([...others, first!.id])).status).toBe(409);
  expect((await join([...others, 'nobody'])).status).toBe(400);
  expect(await inSeason()).toEqual([first!.id]);
});
