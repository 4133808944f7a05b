import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { kindNames } from '#contract/records/allKinds.ts';
import { references, referredBy } from '#contract/records/references.ts';
import type { ClubStore } from '../ClubStore.ts';
import { databases } from './databases.ts';
import { smallClub } from './smallClub.ts';
import { wholeOf } from './wholeOf.ts';

describe.each(databases)('on $name', ({ open }) => {
  let store: ClubStore;
  let dispose: () => Promise<void>;
  beforeEach(async () => {
    ({ store, dispose } = await open());
  });
  afterEach(() => dispose());

  test('a new file holds a club of its own with defaults', async () => {
    const { records, seq } = await store.records();
    expect(records.club).toHaveLength(1);
    expect(records.club[0]).toMatchObject({ massUnit: 'kg', invented: false });
    expect(seq).toBe(0);
  });

  test('a record comes back as it was given, defaults filled in', async () => {
    const { record, seq } = await store.create('bar', { label: ' Long bar ', massKg: 20.4 });
    expect(record).toEqual({ id: record.id, label: 'Long bar', massKg: 20.4, weighed: false, note: '' });
    expect(await store.get('bar', record.id)).toEqual(record);
    expect(await store.list('bar')).toEqual([record]);
    expect(await store.latestSeq()).toBe(seq);
  });

  test('every kind with every reference survives the way through the tables', async () => {
    const club = smallClub();
    const used = kindNames.flatMap((kind) => club[kind].flatMap((record) => referredBy(kind, record)));
    expect(new Set(used.map(({ reference }) => reference))).toEqual(new Set(references));
    await store.importRecords(club);
    expect((await store.records()).records).toEqual(club);
  });

  test('changes that touched records of some kinds, or put another club in, are found among all others', async () => {
    const { seq: replaced } = await store.importRecords(smallClub());
    const [day] = await store.list('day');
    const text = '"kind":"day"';
    await store.create('bar', { label: text, massKg: 20 });
    const { seq: put } = await store.putAll('day', [{ ...day!, title: text }]);
    const { seq: removed } = await store.remove('day', day!.id);
    const { seq: again } = await store.undo(removed);
    const found = async (...asked: Parameters<typeof store.changesTouching>) =>
      (await store.changesTouching(...asked)).map(({ seq }) => seq);
    expect(await found(['day'], 0, 10)).toEqual([replaced, put, removed, again]);
    expect(await found(['day'], replaced, 2)).toEqual([put, removed]);
    expect(await found(['day', 'bar'], replaced, 10)).toHaveLength(4);
    expect(await found(['rack'], replaced, 10)).toEqual([]);
  });

  test('ids sort in the order in which they were made', async () => {
    const made = [];
    for (let i = 0; i < 50; i += 1)
      made.push((await store.create('disc', { faceMassKg: 5, pairs: i })).record);
    expect(await store.list('disc')).toEqual(made);
  });

  test('an update replaces every field and leaves the id', async () => {
    const { record } = await store.create('bar', { label: 'Long', massKg: 20, note: 'bent' });
    const changed = await store.update('bar', record.id, { label: 'Long', massKg: 25 });
    expect(changed.record).toEqual({ ...record, massKg: 25, note: '' });
  });

  test('undo of an update that changed nothing takes back nothing else', async () => {
    const { record, seq } = await store.create('bar', { label: 'Long', massKg: 20 });
    const same = await store.update('bar', record.id, { label: 'Long', massKg: 20 });
    expect(same.seq).toBe(seq + 1);
    expect((await store.changesAfter(seq))[0]?.entries).toEqual([]);
    await expect(store.undo(same.seq)).rejects.toMatchObject({ reason: 'conflict' });
    expect(await store.list('bar')).toEqual([record]);
  });

  test('a wrong or unknown field is refused by name and leaves nothing behind', async () => {
    await expect(store.create('bar', { label: 'Long', massKg: -1 })).rejects.toMatchObject({
      reason: 'invalid',
      field: 'massKg',
    });
    await expect(store.create('bar', { label: 'Long', massKg: 20, colour: 1 })).rejects.toMatchObject({
      field: 'colour',
    });
    expect(await store.list('bar')).toEqual([]);
    expect(await store.latestSeq()).toBe(0);
  });

  test('no reading is as short as its loop at rest, whichever of the two is entered later', async () => {
    await store.importRecords(smallClub());
    const { id: _reading, ...reading } = smallClub().bandReading[0]!;
    const { id, ...pair } = smallClub().bandPair[0]!;
    const slack = {
      reason: 'invalid',
      field: 'lengthM',
      message: expect.stringMatching(/is 1\.04; .* 1\.04/),
    };
    await expect(store.create('bandReading', { ...reading, lengthM: 1.04 })).rejects.toMatchObject(slack);
    // The only reading is of side a, at 1.5 m.
    const tooLong = {
      reason: 'invalid',
      field: 'restLengthAM',
      message: expect.stringMatching(/is 1\.6; .* 1\.5/),
    };
    await expect(store.update('bandPair', id, { ...pair, restLengthAM: 1.6 })).rejects.toMatchObject(tooLong);
    await store.update('bandPair', id, { ...pair, restLengthBM: 1.6 });
    // Side b alone is too long for this one now.
    await expect(store.create('bandReading', { ...reading, side: 'b' })).rejects.toMatchObject({
      field: 'lengthM',
    });
    // A reading that was removed cannot come back once the loop at rest is longer.
    const { seq } = await store.remove('bandReading', 'reading-1');
    await store.update('bandPair', id, { ...pair, restLengthAM: 1.6 });
    await expect(store.undo(seq)).rejects.toMatchObject({ field: 'lengthM' });
    expect(await store.list('bandReading')).toEqual([]);
  });

  test('an id that nobody has is refused where it stands, nested ones too', async () => {
    await store.importRecords(smallClub());
    await expect(
      store.create('rack', { label: 'New', lifts: ['squat'], barId: 'bar-9' }),
    ).rejects.toMatchObject({ reason: 'invalid', field: 'barId' });
    const [best] = smallClub().best;
    const { id: _id, ...fields } = best!;
    const bands = [{ bandPairId: 'pair-1', hookupId: 'hookup-9' }];
    await expect(
      store.create('best', { ...fields, setup: { ...fields.setup, bands } }),
    ).rejects.toMatchObject({ reason: 'invalid', field: 'setup.bands[0].hookupId' });
  });

  test('two bars cannot share a label, whatever its capitals, until one is removed', async () => {
    const { record } = await store.create('bar', { label: 'Ärmel', massKg: 20 });
    const again = { label: 'ÄRMEL', massKg: 15 };
    await expect(store.create('bar', again)).rejects.toMatchObject({ reason: 'conflict', field: 'label' });
    await store.remove('bar', record.id);
    await expect(store.create('bar', again)).resolves.toBeDefined();
  });

  test('anchor points of two racks may share a label', async () => {
    const racks = [];
    for (const label of ['One', 'Two']) racks.push(await store.create('rack', { label, lifts: ['squat'] }));
    for (const { record } of racks)
      await store.create('anchor', { rackId: record.id, label: 'low', zM: 0.1 });
    expect(await store.list('anchor')).toHaveLength(2);
  });

  test('two records swap their labels in one change', async () => {
    const [a, b] = smallClub().bar;
    await store.importRecords(smallClub());
    await store.putAll('bar', [
      { ...a!, label: b!.label },
      { ...b!, label: a!.label },
    ]);
    expect((await store.list('bar')).map(({ label }) => label)).toEqual([b!.label, a!.label]);
  });

  test('a record that another still uses cannot be removed, and the sentence says which', async () => {
    await store.importRecords(smallClub());
    for (const [kind, id, user] of [
      ['bar', 'bar-1', 'rack "Window rack"'],
      ['anchor', 'anchor-1', 'hookup "doubled low"'],
      ['chainPair', 'chain-1', 'best of 2026-10-03'],
      ['lifter', 'lifter-1', 'training day of 2026-11-26'],
    ] as const) {
      const refused = store.remove(kind, id);
      await expect(refused).rejects.toMatchObject({ reason: 'conflict' });
      await expect(refused).rejects.toThrow(user);
    }
    expect((await store.records()).records).toEqual(smallClub());
  });

  test('what belongs to a removed owner goes with it, and comes back with it', async () => {
    await store.importRecords(smallClub());
    await store.remove('day', 'day-1');
    await store.remove('comparison', 'comparison-1');
    const before = (await store.records()).records;
    const { seq } = await store.remove('lifter', 'lifter-1');
    const { records } = await store.records();
    expect([records.lifter, records.bodyMass, records.liftHeights, records.best]).toEqual([[], [], [], []]);
    await store.undo(seq);
    expect((await store.records()).records).toEqual(before);
  });

  test('undo takes back an addition, a change and an undo', async () => {
    const { record, seq: added } = await store.create('bar', { label: 'Long', massKg: 20 });
    const { seq: changed } = await store.update('bar', record.id, { label: 'Long', massKg: 25 });
    const back = await store.undo(changed);
    expect(back.undoes).toBe(changed);
    expect((await store.get('bar', record.id))?.massKg).toBe(20);
    await store.undo(back.seq);
    expect((await store.get('bar', record.id))?.massKg).toBe(25);
    await expect(store.undo(added)).rejects.toMatchObject({ reason: 'conflict' });
    await expect(store.undo(999)).rejects.toMatchObject({ reason: 'missing' });
  });

  test('undo of an addition is refused while something uses it', async () => {
    const bar = await store.create('bar', { label: 'Long', massKg: 20 });
    await store.create('rack', { label: 'One', lifts: ['squat'], barId: bar.record.id });
    await expect(store.undo(bar.seq)).rejects.toThrow('rack "One" still uses it');
  });

  test('a band reading is added and removed, never changed', async () => {
    await store.importRecords(smallClub());
    const [reading] = await store.list('bandReading');
    const { id, ...fields } = reading!;
    await expect(store.update('bandReading', id, { ...fields, forceN: 250 })).rejects.toMatchObject({
      reason: 'conflict',
    });
    await store.remove('bandReading', id);
    expect(await store.list('bandReading')).toEqual([]);
  });

  test('the record of the club itself stays', async () => {
    const [club] = await store.list('club');
    await expect(store.remove('club', club!.id)).rejects.toMatchObject({ reason: 'conflict' });
    await expect(store.create('club', { name: 'Another' })).rejects.toMatchObject({ reason: 'conflict' });
  });

  test('writes that come at once stand one after another, none lost', async () => {
    const labels = Array.from({ length: 20 }, (_, i) => `Bar ${i}`);
    const kept = await Promise.all(labels.map((label) => store.create('bar', { label, massKg: 20 })));
    const inOrder = kept.toSorted((a, b) => a.seq - b.seq);
    expect(inOrder.map(({ seq }) => seq)).toEqual(labels.map((_, i) => i + 1));
    // Ids are made when a write has its turn.
    expect(await store.list('bar')).toEqual(inOrder.map(({ record }) => record));
  });

  test('a reader who knows a number gets every change after it, in order and once', async () => {
    const heard: number[] = [];
    const stop = store.onChange((seq) => heard.push(seq));
    for (const label of ['a', 'b', 'c', 'd']) await store.create('bar', { label, massKg: 20 });
    stop();
    await store.create('bar', { label: 'e', massKg: 20 });
    expect(heard).toEqual([1, 2, 3, 4]);
    expect((await store.changesAfter(2)).map(({ seq }) => seq)).toEqual([3, 4, 5]);
    expect((await store.changesAfter(4))[0]?.entries).toMatchObject([
      { kind: 'bar', before: null, after: { label: 'e' } },
    ]);
  });

  test('prescriptions of a day pile up and the latest is read', async () => {
    await store.importRecords(smallClub());
    expect(await store.latestPrescription('day-1')).toBeNull();
    const first = await store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { sets: [1] });
    // Solved by a clock that was set back: still the later one.
    const second = await store.addPrescription('day-1', '2026-11-24T05:00:00.000Z', { sets: [2] });
    expect(await store.latestPrescription('day-1')).toEqual(second);
    expect(await store.prescription('day-1', 1)).toEqual(first);
    expect(await store.prescription('day-1', 3)).toBeNull();
    expect((await wholeOf(store)).prescriptions).toEqual([first, second]);
    await expect(store.addPrescription('day-9', '2026-11-25T05:00:00.000Z', {})).rejects.toMatchObject({
      reason: 'missing',
    });
  });

  test('an import with one wrong record leaves the club as it was', async () => {
    await store.importRecords(smallClub());
    const broken = [
      { ...smallClub(), club: [] },
      { ...smallClub(), lifter: [] },
      { ...smallClub(), bar: [...smallClub().bar, ...smallClub().bar] },
      { ...smallClub(), box: [{ ...smallClub().box[0]!, heightM: 9 }] },
    ];
    for (const club of broken)
      await expect(store.importRecords(club)).rejects.toMatchObject({ reason: 'invalid' });
    expect((await store.records()).records).toEqual(smallClub());
  });
});
