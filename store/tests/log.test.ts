import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ClubStore, Given } from '../ClubStore.ts';
import { databases, type TestClub } from './databases.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

describe.each(databases)('the log on $name', ({ open }) => {
  let store: ClubStore;
  let database: TestClub['database'];
  let dispose: TestClub['dispose'];
  beforeEach(async () => {
    ({ store, database, dispose } = await open());
    await store.importRecords(smallClub());
  });
  afterEach(() => dispose());

  const { setup } = smallClub().best[0]!;
  const straight = { start: { way: 'free' }, barKg: 100 };

  test('gives a set back as it was given, defaults filled in, and tells listeners of it', async () => {
    const heard: number[] = [];
    store.onChange((seq) => heard.push(seq));
    const spoken = {
      made: 1,
      stoppedAtS: 0.3,
      meanSpeedsMps: [0.42],
      repsInReserve: 0,
      bodyMassKg: 51.2,
      dayId: 'day-1',
    };
    const { sets, seq } = await store.logSets([squatSet(spoken), squatSet({ setup: straight })]);
    expect(sets).toMatchObject([
      { ...squatSet(spoken), order: 1, equipment: 'raw', platform: false, struckAt: null },
      {
        order: 2,
        setup: { ...straight, rackId: null, bands: [], chains: [] },
        meanSpeedsMps: [],
        restS: null,
      },
    ]);
    expect(await store.loggedSets()).toEqual(sets);
    expect(heard).toEqual([seq]);
    expect(await store.latestSeq()).toBe(seq);
    expect((await store.changesAfter(seq - 1))[0]?.sets?.counts).toEqual(sets.map(({ id }) => id));
  });

  test('keeps the order of a day: counted on where none is given, whoever logs at the same time', async () => {
    await store.logSets([squatSet({ order: 4 }), squatSet({ doneOn: '2026-11-19' })]);
    await Promise.all([store.logSets([squatSet(), squatSet()]), store.logSets([squatSet()])]);
    const found = (await store.loggedSets()).map(({ doneOn, order }) => `${doneOn} ${order}`);
    expect(found).toEqual(['2026-11-19 1', '2026-11-20 4', '2026-11-20 5', '2026-11-20 6', '2026-11-20 7']);
  });

  test('is narrowed by lifter, training day and date, both ends included', async () => {
    const { record: other } = await store.create('lifter', { name: 'Tor Fenn', category: 'men' });
    await store.logSets([
      squatSet({ doneOn: '2026-01-01', dayId: 'day-1' }),
      squatSet({ doneOn: '2026-01-02' }),
      squatSet({ doneOn: '2026-01-03', lifterId: other.id }),
    ]);
    const dates = async (filter: Parameters<ClubStore['loggedSets']>[0]) =>
      (await store.loggedSets(filter)).map(({ doneOn }) => doneOn.slice(-2));
    expect(await dates({ lifterId: 'lifter-1' })).toEqual(['01', '02']);
    expect(await dates({ dayId: 'day-1' })).toEqual(['01']);
    expect(await dates({ from: '2026-01-02', to: '2026-01-03' })).toEqual(['02', '03']);
    expect(await dates({ to: '2026-01-01' })).toEqual(['01']);
  });

  test('strikes and restores a set; each is a change that can be undone', async () => {
    const { sets, seq } = await store.logSets([squatSet(), squatSet()]);
    const [first] = sets;
    const struck = await store.strikeSet(first!.id);
    const marks = async () => (await store.loggedSets()).map(({ struckAt }) => struckAt !== null);
    expect(await marks()).toEqual([true, false]);
    await expect(store.strikeSet(first!.id)).rejects.toMatchObject({ reason: 'conflict' });
    await expect(store.undo(seq)).rejects.toMatchObject({ reason: 'conflict', field: 'seq' });
    await store.undo(struck.seq);
    expect(await store.loggedSets()).toEqual(sets);
    const undone = await store.undo(seq);
    expect(undone.undoes).toBe(seq);
    expect(await marks()).toEqual([true, true]);
    await store.undo(undone.seq);
    expect(await store.loggedSets()).toEqual(sets);
    await expect(store.restoreSet(first!.id)).rejects.toMatchObject({ reason: 'conflict' });
    await expect(store.restoreSet('nobody')).rejects.toMatchObject({ reason: 'missing' });
  });

  test('corrects a set as one change: the new one takes its place, and one undo brings the old one back', async () => {
    const heard: number[] = [];
    const { sets } = await store.logSets([squatSet(), squatSet()]);
    store.onChange((seq) => heard.push(seq));
    const [first, second] = sets;
    const { sets: corrected, seq } = await store.correctSets([
      { id: first!.id, set: squatSet({ reps: 3, made: 3 }) },
    ]);
    const set = corrected[0]!;
    expect(set).toMatchObject({ reps: 3, order: 1, struckAt: null });
    expect(heard).toEqual([seq]);
    const counting = async () =>
      (await store.loggedSets()).filter(({ struckAt }) => struckAt === null).map(({ id }) => id);
    expect((await counting()).sort()).toEqual([set.id, second!.id].sort());
    const undone = await store.undo(seq);
    expect((await counting()).sort()).toEqual([first!.id, second!.id].sort());
    await store.undo(undone.seq);
    expect((await counting()).sort()).toEqual([set.id, second!.id].sort());
    const moved = await store.correctSets([{ id: set.id, set: squatSet({ doneOn: '2026-11-21' }) }]);
    expect(moved.sets[0]).toMatchObject({ doneOn: '2026-11-21', order: 1 });
  });

  test('corrects nothing that is struck, unknown or wrong, and leaves the log as it was', async () => {
    const { sets } = await store.logSets([squatSet(), squatSet({ order: 7 })]);
    const [first, second] = sets;
    await store.strikeSet(first!.id);
    const before = await store.loggedSets();
    const refused = (id: string, fields: Given) =>
      expect(store.correctSets([{ id, set: squatSet(fields) }])).rejects;
    await refused(first!.id, {}).toMatchObject({ reason: 'conflict', field: 'id' });
    await refused('nobody', {}).toMatchObject({ reason: 'missing', field: 'id' });
    await refused(second!.id, { reps: 0 }).toMatchObject({ reason: 'invalid', field: 'reps' });
    await refused(second!.id, { lifterId: 'x' }).toMatchObject({ reason: 'invalid', field: 'lifterId' });
    expect(await store.loggedSets()).toEqual(before);
  });

  test('corrects a set whose gear is gone since, but hangs no other gear that is gone on it', async () => {
    const { sets } = await store.logSets([squatSet(), squatSet({ setup: straight })]);
    for (const [kind, id] of [
      ['day', 'day-1'],
      ['best', 'best-1'],
      ['bandPair', 'pair-1'],
    ] as const) {
      await store.remove(kind, id);
    }
    const again = await store.correctSets([{ id: sets[0]!.id, set: squatSet({ made: 1 }) }]);
    expect(again.sets[0]!.made).toBe(1);
    await expect(store.correctSets([{ id: sets[1]!.id, set: squatSet() }])).rejects.toMatchObject({
      field: 'setup.bands[0].bandPairId',
    });
  });

  test('undoes what was written before one change could both strike and log', async () => {
    const { sets, seq } = await store.logSets([squatSet()]);
    const ids = sets.map(({ id }) => id);
    const formerly = JSON.stringify({ did: 'logged', ids });
    await database.db
      .updateTable('change')
      .set({ sets: formerly })
      .where('clubId', '=', store.clubId)
      .where('seq', '=', seq)
      .execute();
    const undone = await store.undo(seq);
    expect(undone.sets).toEqual({ counts: [], struck: ids });
    expect((await store.loggedSets())[0]!.struckAt).not.toBeNull();
  });

  test('takes more sets at once than one query can name, and one undo strikes them all', async () => {
    const { seq } = await store.logSets(Array.from({ length: 999 }, () => squatSet()));
    await store.undo(seq);
    expect((await store.loggedSets()).filter(({ struckAt }) => struckAt !== null)).toHaveLength(999);
  });

  test('takes no more sets of a lifter in a day than a file of it may hold', async () => {
    await store.logSets([squatSet({ order: 1000 })]);
    await expect(store.logSets([squatSet()])).rejects.toMatchObject({ reason: 'invalid', field: 'doneOn' });
    expect(await store.loggedSets()).toHaveLength(1);
  });

  test.each<[string, Given, string]>([
    ['more reps made than asked for', { made: 3 }, 'made'],
    ['a place of the miss without one', { stoppedAtS: 0.4 }, 'stoppedAtS'],
    ['a box without a height', { setup: { ...setup, start: { way: 'box' } } }, 'setup.start.heightM'],
    ['an empty id', { id: '' }, 'id'],
    ['a lifter that is not there', { lifterId: 'x' }, 'lifterId'],
    ['a rack that is not there', { setup: { ...setup, rackId: 'x' } }, 'setup.rackId'],
    [
      'a pair that is not there',
      { setup: { ...setup, bands: [{ bandPairId: 'x', hookupId: 'hookup-1' }] } },
      'setup.bands[0].bandPairId',
    ],
    [
      'a hookup that is not there',
      { setup: { ...setup, bands: [{ bandPairId: 'pair-1', hookupId: 'x' }] } },
      'setup.bands[0].hookupId',
    ],
    [
      'a chain that is not there',
      { setup: { ...setup, chains: [{ chainPairId: 'x', pairs: 1 }] } },
      'setup.chains[0].chainPairId',
    ],
    ['a day that is not there', { dayId: 'x' }, 'dayId'],
  ])('refuses %s and with it all that came along', async (_why, wrong, field) => {
    const refused = store.logSets([squatSet(), squatSet(wrong)]);
    await expect(refused).rejects.toMatchObject({ reason: 'invalid', field: `sets[1].${field}` });
    await expect(refused).rejects.toThrow(/^[^.]*sets\[1\]\.[^]*\.$/);
    expect(await store.loggedSets()).toEqual([]);
  });

  test('goes and comes back with its lifter, and outlives the gear that it names', async () => {
    const { sets } = await store.logSets([squatSet()]);
    await store.remove('day', 'day-1');
    await store.remove('comparison', 'comparison-1');
    const { seq } = await store.remove('lifter', 'lifter-1');
    expect(await store.loggedSets()).toEqual([]);
    await store.undo(seq);
    expect(await store.loggedSets()).toEqual(sets);
    await store.remove('best', 'best-1');
    await store.remove('rack', 'rack-1');
    expect(await store.loggedSets()).toEqual(sets);
    await expect(store.logSets([squatSet()])).rejects.toMatchObject({ field: 'sets[0].setup.rackId' });
    const former = await store.formerGear(sets);
    expect(former.map(({ kind, record }) => `${kind} ${record.label}`).sort()).toEqual([
      'anchor low',
      'hookup doubled low',
      'rack Window rack',
    ]);
  });

  test('counts a cycle of each pair for every rep, a missed one too, by day; struck sets do not count', async () => {
    await store.logSets([
      squatSet({ reps: 5, made: 5 }),
      squatSet({ reps: 3, made: 1 }),
      squatSet({ doneOn: '2026-11-21' }),
      squatSet({ setup: straight, reps: 10, made: 10 }),
    ]);
    const { sets } = await store.logSets([squatSet({ reps: 50, made: 50 })]);
    await store.strikeSet(sets[0]!.id);
    expect((await store.bandReps()).bandReps).toEqual([
      { bandPairId: 'pair-1', doneOn: '2026-11-20', reps: 7 },
      { bandPairId: 'pair-1', doneOn: '2026-11-21', reps: 2 },
    ]);
  });
});
