import { expect, test } from 'vitest';
import { clubChanges, clubState } from '#contract/changes/clubState.ts';
import { withChanges } from '#contract/changes/withChanges.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

test('a record is added, read, replaced, removed and brought back', async () => {
  const { ask } = await testApp();
  const added = await ask('POST', '/api/records/bar', { label: 'Long bar', massKg: 20 });
  expect(added.status).toBe(201);
  const { record } = added.json;
  expect(record).toEqual({ id: record.id, label: 'Long bar', massKg: 20, weighed: false, note: '' });

  const heavier = { ...record, massKg: 25 };
  const replaced = await ask('PUT', `/api/records/bar/${record.id}`, heavier);
  expect(replaced).toMatchObject({ status: 200, json: { record: heavier, seq: added.json.seq + 1 } });
  expect((await ask('GET', '/api/records/bar')).json).toEqual({ records: [heavier] });

  const removed = await ask('DELETE', `/api/records/bar/${record.id}`);
  expect(removed).toEqual({ status: 200, json: { seq: replaced.json.seq + 1 } });
  expect((await ask('GET', '/api/records/bar')).json).toEqual({ records: [] });
  const undone = await ask('POST', `/api/undo/${removed.json.seq}`);
  expect(undone).toEqual({ status: 200, json: { seq: removed.json.seq + 1 } });
  expect((await ask('GET', '/api/records/bar')).json).toEqual({ records: [heavier] });
});

test('the whole club comes in one document with the number of its last change', async () => {
  const { ask, store } = await testApp(smallClub());
  const [last] = await store.changesAfter(0);
  expect(await ask('GET', '/api/club')).toEqual({
    status: 200,
    json: { records: smallClub(), seq: 1, madeAt: last!.madeAt },
  });
});

test('who knows the club asks for what was done since, and gets the whole again when it was replaced', async () => {
  const { ask, store } = await testApp(smallClub());
  const known = (await ask('GET', '/api/club')).json;
  const path = `/api/club/changes?after=${known.seq}&madeAt=${known.madeAt}`;
  const added = await ask('POST', '/api/records/bodyMass', {
    lifterId: 'lifter-1',
    takenOn: '2026-11-20',
    massKg: 52,
  });
  await ask('DELETE', '/api/records/best/best-1');
  const { json, status } = await ask('GET', path);
  expect(status).toBe(200);
  expect(clubChanges.parse(json)).toEqual(json);
  expect(clubState.parse(known)).toEqual(known);
  expect(json).toMatchObject({
    seq: known.seq + 2,
    put: { bodyMass: [added.json.record] },
    removed: { best: ['best-1'] },
    sets: [],
    changes: [{ who: { name: 'a test' } }, { who: { name: 'a test' } }],
  });
  expect(withChanges(known, json)).toEqual((await ask('GET', '/api/club')).json);
  await store.importRecords(smallClub());
  expect((await ask('GET', path)).json).toEqual((await ask('GET', '/api/club')).json);
});

test.each([
  ['a change without its instant', 'GET', '/api/club/changes?after=1', undefined, 400, 'madeAt'],
  [
    'a change that is no number',
    'GET',
    '/api/club/changes?after=x&madeAt=2026-11-25T05:00:00.000Z',
    undefined,
    400,
    'after',
  ],
  ['a wrong value', 'POST', '/api/records/bar', { label: 'A', massKg: 0 }, 400, 'massKg'],
  ['an unknown field', 'POST', '/api/records/bar', { label: 'A', massKg: 20, size: 1 }, 400, 'size'],
  ['an id of its own', 'POST', '/api/records/bar', { id: 'mine', label: 'A', massKg: 20 }, 400, 'id'],
  [
    'another id than the path',
    'PUT',
    '/api/records/bar/bar-1',
    { id: 'bar-2', label: 'A', massKg: 20 },
    400,
    'id',
  ],
  [
    'a missing owner',
    'POST',
    '/api/records/bodyMass',
    { lifterId: 'x', takenOn: '2026-11-25', massKg: 80 },
    400,
    'lifterId',
  ],
  [
    'a weighing of a day to come',
    'POST',
    '/api/records/bodyMass',
    { lifterId: 'lifter-1', takenOn: '2999-01-01', massKg: 80 },
    400,
    'takenOn',
  ],
  [
    'a time zone that no clock knows',
    'PUT',
    '/api/records/club/the-club',
    { name: 'A', timeZone: 'Mars' },
    400,
    'timeZone',
  ],
  ['no JSON', 'POST', '/api/records/bar', '{', 400, ''],
  ['a list for a record', 'POST', '/api/records/bar', [], 400, ''],
  ['an unknown kind', 'POST', '/api/records/sofa', {}, 404, 'kind'],
  ['a name that every object has', 'GET', '/api/records/toString', undefined, 404, 'kind'],
  ['an unknown record', 'PUT', '/api/records/bar/bar-9', { label: 'A', massKg: 20 }, 404, 'id'],
  ['an unknown change', 'POST', '/api/undo/99', undefined, 404, 'seq'],
  ['a label that is taken', 'POST', '/api/records/bar', { label: 'long BAR', massKg: 20 }, 409, 'label'],
  ['a record in use', 'DELETE', '/api/records/bar/bar-1', undefined, 409, ''],
  ['a path that leads nowhere', 'GET', '/api/nowhere', undefined, 404, ''],
] as const)('%s is refused with one sentence', async (_why, method, path, body, status, field) => {
  const { ask, store } = await testApp(smallClub());
  const answer = await ask(method, path, body);
  expect(answer).toMatchObject({ status, json: { error: { field } } });
  expect(answer.json.error.message).toMatch(/^[^.].*\.$/s);
  expect((await store.records()).records).toEqual(smallClub());
});
