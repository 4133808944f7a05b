import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { exportArchive } from '../archive.ts';
import type { ClubStore } from '../ClubStore.ts';
import { undoStates } from '../undoStates.ts';
import { databases } from './databases.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

const page = { before: null, most: 50 };

async function undoNext(store: ClubStore): Promise<boolean> {
  const { undo } = await store.whatWasDone({ before: null, most: 1 });
  if (!undo || undo.whyNot !== null) return false;
  await store.undo(undo.seq);
  return true;
}

async function redoNext(store: ClubStore): Promise<boolean> {
  const { redo } = await store.whatWasDone({ before: null, most: 1 });
  if (!redo) return false;
  await store.undo(redo.seq);
  return true;
}

/** All that the club has but for when sets were struck, which a later strike says anew. */
async function contentOf(store: ClubStore): Promise<string> {
  return (await exportArchive(store)).replaceAll(/"struckAt":"[^"]*"/g, '"struckAt":"then"');
}

type Step = (store: ClubStore, i: number) => Promise<unknown>;
const steps: readonly Step[] = [
  (store, i) => store.create('bar', { label: `Bar ${i}`, massKg: 20 }),
  async (store, i) => {
    const bar = (await store.list('bar'))[i % 2]!;
    const { id, ...fields } = bar;
    return store.update('bar', id, { ...fields, massKg: 15 + (i % 9) });
  },
  async (store) => {
    const disc = (await store.list('disc'))[0];
    return disc && store.remove('disc', disc.id);
  },
  (store, i) => store.logSets([squatSet({ note: `${i}` }), squatSet()]),
  async (store) => {
    const set = (await store.loggedSets()).find(({ struckAt }) => struckAt === null);
    return set && store.strikeSet(set.id);
  },
  async (store, i) => {
    const set = (await store.loggedSets()).find(({ struckAt }) => struckAt === null);
    return set && store.correctSets([{ id: set.id, set: squatSet({ note: `corrected ${i}` }) }]);
  },
  (store) => store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', {}),
];

describe.each(databases)('what was done, on $name', ({ open }) => {
  let store: ClubStore;
  let dispose: () => Promise<void>;
  beforeEach(async () => {
    ({ store, dispose } = await open());
    await store.importRecords(smallClub());
  });
  afterEach(() => dispose());

  test('whatever was done is taken back one after the other to the beginning, and done again to the end', async () => {
    const drawn = fc.array(fc.integer({ min: 0, max: steps.length - 1 }), { minLength: 1, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(drawn, async (sequence) => {
        const one = await open();
        await one.store.importRecords(smallClub());
        const before = await contentOf(one.store);
        const states = [before];
        for (const [i, at] of sequence.entries()) {
          await steps[at]!(one.store, i);
          states.push(await contentOf(one.store));
        }
        let undone = 0;
        while (await undoNext(one.store)) undone += 1;
        const { undo } = await one.store.whatWasDone(page);
        expect(undo).toMatchObject({
          replaced: true,
          whyNot: expect.stringMatching(/copies of the club.*\.$/),
        });
        const { records, sets } = JSON.parse(await contentOf(one.store));
        expect(records).toEqual(JSON.parse(before).records);
        expect(sets.filter(({ struckAt }: { struckAt: unknown }) => struckAt === null)).toEqual([]);
        for (let i = 0; i < undone; i += 1) expect(await redoNext(one.store)).toBe(true);
        expect(await redoNext(one.store)).toBe(false);
        expect(await contentOf(one.store)).toBe(states.at(-1));
        await one.dispose();
      }),
      { numRuns: 8 },
    );
  });

  test('each line says who, when, what of which record, and whether it still stands', async () => {
    const { record, seq } = await store.create('bar', { label: 'Thick', massKg: 20 });
    const { id, ...fields } = record;
    await store.update('bar', id, { ...fields, massKg: 21 });
    await store.logSets([squatSet(), squatSet()]);
    await store.remove('lifter', 'lifter-1').catch(() => {});
    const { changes, undo, redo, hasOlder } = await store.whatWasDone({ before: null, most: 3 });
    expect(hasOlder).toBe(true);
    expect(redo).toBeNull();
    const logged = changes.find(({ sets }) => sets.length > 0)!;
    expect(logged).toMatchObject({
      who: store.who,
      sets: [{ did: 'counts', isNew: true, count: 2, lifter: smallClub().lifter[0]!.name, lift: 'squat' }],
      isUndone: false,
    });
    const changed = changes.find(({ seq: at }) => at === seq + 1)!;
    expect(changed).toMatchObject({
      records: [{ kind: 'bar', did: 'changed', count: 1, called: 'bar "Thick"', of: null }],
      whyNot: null,
    });
    expect(undo).toEqual(changes[0]);
    const older = await store.whatWasDone({ before: changes.at(-1)!.seq, most: 3 });
    expect(older.changes[0]!.seq).toBe(changes.at(-1)!.seq - 1);
    expect(older.undo).toEqual(undo);
  });

  test('one that something later stands against says why and by whom, and the others can be taken back all the same', async () => {
    const { record, seq } = await store.create('bar', { label: 'Thick', massKg: 20 });
    const { id, ...fields } = record;
    await store.update('bar', id, { ...fields, massKg: 21 });
    const { changes } = await store.whatWasDone(page);
    const added = changes.find((change) => change.seq === seq)!;
    expect(added.whyNot).toBe(
      `This cannot be undone: the bar "Thick" was changed again since by ${store.who.name}.`,
    );
    await expect(store.undo(seq)).rejects.toThrow(added.whyNot!);
    await store.undo(seq + 1);
    const after = await store.whatWasDone(page);
    expect(after.changes.find((change) => change.seq === seq)!.whyNot).toBeNull();
    expect(after.changes.find((change) => change.seq === seq + 1)).toMatchObject({
      isUndone: true,
      whyNot: 'It is taken back already.',
    });
    expect(after.changes[0]).toMatchObject({
      back: { of: seq + 1, again: false },
      records: [{ did: 'changed', called: 'bar "Thick"' }],
    });
    expect([after.undo!.seq, after.redo!.seq]).toEqual([seq, seq + 2]);
    // Something else is done: nothing can be done again over it.
    await store.create('disc', { faceMassKg: 5, pairs: 1 });
    expect((await store.whatWasDone(page)).redo).toBeNull();
  });
});

test('two hundred changes are taken back one after the other by a program that was started anew', async () => {
  const path = newClubPath();
  const first = await openClub(path);
  await first.importRecords(smallClub());
  const before = await exportArchive(first);
  for (let i = 0; i < 200; i += 1) await steps[i % 2]!(first, i);
  const after = await exportArchive(first);
  await first.close();

  const again = await openClub(path);
  for (let i = 0; i < 200; i += 1) expect(await undoNext(again)).toBe(true);
  expect(await exportArchive(again)).toBe(before);
  expect(await undoNext(again)).toBe(false);
  await again.close();

  const third = await openClub(path);
  for (let i = 0; i < 200; i += 1) expect(await redoNext(third)).toBe(true);
  expect(await exportArchive(third)).toBe(after);
  await third.close();
});

test('of a chain of takings back the parity tells whether a change stands', () => {
  for (let length = 0; length <= 6; length += 1) {
    const chain = Array.from({ length }, (_, i) => ({ seq: i + 2, undoes: i + 1 }));
    const states = undoStates(chain);
    expect(states.isUndone(1)).toBe(length % 2 === 1);
    expect(states.back(1)).toBeNull();
    if (length > 0) expect(states.back(length + 1)).toEqual({ of: 1, again: length % 2 === 0 });
  }
});
