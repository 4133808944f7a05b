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

test('two seasons from the same method that comes along follow one and the same; a method of that version with another word in it is refused with the next number', async () => {
  const { ask } = await testApp(smallClub());
  const kept = (await ask('GET', '/api/club')).json.records.method.length;
  for (const title of ['Spring', 'Summer'])
    expect((await ask('POST', '/api/seasons', { ...asked, title })).status).toBe(201);
  const { method, season } = (await ask('GET', '/api/club')).json.records;
  expect(method).toHaveLength(kept + 1);
  const ids = season.flatMap((one: { title: string; methodId: string }) =>
    ['Spring', 'Summer'].includes(one.title) ? [one.methodId] : [],
  );
  expect(new Set(ids).size).toBe(1);
  const other = { ...shippedMethods[3], says: 'Otherwise.' };
  const { status, json } = await ask('POST', '/api/seasons', { ...asked, method: { document: other } });
  expect(status).toBe(409);
  expect(json.error.message).toContain(`must be version ${other.version! + 1}`);
});

test('of two tablets that keep the same next version of a method at once, one is refused with the number it can have', async () => {
  const { ask } = await testApp(smallClub());
  const { methodDocument } = smallClub().method[0]!;
  const keep = (says: string, version: number) =>
    ask('POST', '/api/records/method', { methodDocument: { ...methodDocument, says, version } });
  const next = methodDocument.version + 1;
  const answers = await Promise.all([keep('By the first.', next), keep('By the second.', next)]);
  expect(answers.map(({ status }) => status).toSorted()).toEqual([201, 409]);
  const refused = answers.find(({ status }) => status === 409)!;
  expect(refused.json.error.message).toContain(`must be version ${next + 1}`);
  expect((await keep('By the second.', next + 1)).status).toBe(201);
});
