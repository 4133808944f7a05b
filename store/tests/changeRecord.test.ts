import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ClubStore } from '../ClubStore.ts';
import { databases, type TestClub } from './databases.ts';
import { tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';

describe.each(databases)('a change on $name', ({ open }) => {
  let club: TestClub;
  let store: ClubStore;
  beforeEach(async () => {
    club = await open();
    ({ store } = club);
    await store.importRecords(smallClub());
  });
  afterEach(() => club.dispose());
  const [bar] = smallClub().bar;
  const id = bar!.id;
  const found = { massKg: bar!.massKg };

  test('keeps what another one changed in another field', async () => {
    await store.change('bar', id, { found: { note: '' }, wanted: { note: 'bent' } });
    const { record } = await store.change('bar', id, { found, wanted: { massKg: 25 } });
    expect(record).toEqual({ ...bar, note: 'bent', massKg: 25 });
    expect(await store.get('bar', id)).toEqual(record);
  });

  test('of what another one changed is refused with who, which field and to what; after a look it goes through', async () => {
    const before = await store.change('bar', id, { found, wanted: { massKg: 15 } });
    const refused = store.change('bar', id, { found, wanted: { massKg: 25 } });
    await expect(refused).rejects.toMatchObject({
      reason: 'conflict',
      field: 'massKg',
      message: expect.stringMatching(/massKg .*"Long bar".* a test, to 15; .* 25\./),
      clash: { record: before.record, who: tester, fields: [{ path: ['massKg'], theirs: 15, yours: 25 }] },
    });
    expect(await store.latestSeq()).toBe(before.seq);
    const { record } = await store.change('bar', id, { found: { massKg: 15 }, wanted: { massKg: 25 } });
    expect(record.massKg).toBe(25);
  });

  test('that is sent twice is the same change, and its undo takes back no other', async () => {
    const once = await store.change('bar', id, { found, wanted: { massKg: 25 } });
    const twice = await store.change('bar', id, { found, wanted: { massKg: 25 } });
    expect(twice.record).toEqual(once.record);
    await store.change('bar', id, { found: { note: '' }, wanted: { note: 'bent' } });
    await expect(store.undo(twice.seq)).rejects.toMatchObject({ reason: 'conflict' });
    await expect(store.undo(once.seq)).rejects.toMatchObject({ reason: 'conflict' });
    expect(await store.get('bar', id)).toMatchObject({ massKg: 25, note: 'bent' });
  });

  test('brought together with another is undone alone', async () => {
    await store.change('bar', id, { found: { note: '' }, wanted: { note: 'bent' } });
    const { seq } = await store.change('bar', id, { found, wanted: { massKg: 25 } });
    await store.undo(seq);
    expect(await store.get('bar', id)).toEqual({ ...bar, note: 'bent' });
  });

  test('of a record that another one removed says so', async () => {
    const { record } = await store.create('box', { label: 'Step', heightM: 0.2 });
    await store.remove('box', record.id);
    await expect(
      store.change('box', record.id, { found: { note: '' }, wanted: { note: 'red' } }),
    ).rejects.toMatchObject({
      reason: 'missing',
      message: expect.stringContaining('removed meanwhile by a test'),
    });
  });

  test('is judged as any other: beside what it finds, and by the shape of its kind', async () => {
    const wrong = [
      [{ found, wanted: { massKg: 0 } }, 'massKg'],
      [{ found: {}, wanted: { massKg: 25 } }, 'found.massKg'],
      [{ found, wanted: {} }, 'wanted.massKg'],
      [{ found: { id }, wanted: { id: 'other' } }, 'wanted.id'],
      [{ found: { size: null }, wanted: { size: 1 } }, 'size'],
    ] as const;
    for (const [how, field] of wrong) {
      await expect(store.change('bar', id, how)).rejects.toMatchObject({ field });
    }
    expect(await store.get('bar', id)).toEqual(bar);
  });
});
