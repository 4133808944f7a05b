import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nothingBeside } from '#contract/archive/archiveContent.ts';
import { archiveVersion } from '#contract/archive/archiveShape.ts';
import { writeArchive } from '#contract/archive/writeArchive.ts';
import { kindsOwnedBy } from '#contract/records/ownRecords.ts';
import { arbitraryRecord } from '#contract/tests/arbitraryRecord.ts';
import { exportArchive, restoreArchive } from '../archive.ts';
import type { ClubStore } from '../ClubStore.ts';
import { readCopy } from '../copies/readCopy.ts';
import { databases } from './databases.ts';
import { tester } from './openClub.ts';
import { smallClub, smallClubKept } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

const kept = readdirSync(new URL('archives/', import.meta.url))
  .map((file) => Number.parseInt(file, 10))
  .toSorted((a, b) => a - b);
const good = JSON.parse(await writeArchive({ records: smallClub(), ...nothingBeside }));

const idsIn = (archive: string): string[] =>
  JSON.parse(archive).records.bar.map(({ id }: { id: string }) => id);
/** What was there before, as an archive. */
const keptText = (path: string) =>
  readCopy({ path }, 'club', tester, async (archive) => [...archive].join(''));
const full = async () => {
  throw new Error('The disk is full.');
};

describe.each(databases)('an archive on $name', ({ open, takesNul }) => {
  let store: ClubStore;
  let dispose: () => Promise<void>;
  beforeEach(async () => {
    ({ store, dispose } = await open());
  });
  afterEach(() => dispose());

  async function throughAnEmptyFile(text: string): Promise<string> {
    const empty = await open();
    await restoreArchive(empty.store, [text]);
    const again = await exportArchive(empty.store);
    await empty.dispose();
    return again;
  }

  // Each file was written by the program as it was with that version; it stays as it is.
  test('is kept here of every version before the last', () => {
    const earlier = Array.from({ length: archiveVersion - 1 }, (_, i) => `${i + 1}.json`);
    expect(kept.map((version) => `${version}.json`)).toEqual(earlier);
  });

  test.each(kept)('of version %i brings what it held, and nothing of what came later', async (version) => {
    const text = await readFile(new URL(`archives/${version}.json`, import.meta.url), 'utf8');
    expect(JSON.parse(text).version).toBe(version);
    await restoreArchive(store, [text]);
    const had = smallClubKept(text, (kind) => Object.hasOwn(JSON.parse(text).records, kind));
    expect((await store.records()).records).toEqual(had);
    expect(await store.loggedSets()).toEqual([]);
  });

  test('restores byte for byte, prescriptions included', async () => {
    await store.importRecords(smallClub());
    await store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { z: 1, a: [{ y: null, b: 0.1 }] });
    await store.addPrescription('day-1', '2026-11-25T06:00:00.000Z', { 'é\u2028"': 'x' });
    const text = await exportArchive(store);
    expect(await throughAnEmptyFile(text)).toBe(text);
    expect(JSON.parse(text).prescriptions).toHaveLength(2);
  });

  test('restores taken plans byte for byte, each under its number', async () => {
    await store.importRecords(smallClub());
    await store.addTakenPlan('season-1', '2026-11-25T05:00:00.000Z', { z: 1, a: [{ y: null, b: 0.1 }] });
    const second = await store.addTakenPlan('season-1', '2026-11-25T06:00:00.000Z', { later: true });
    expect(second).toMatchObject({ number: 2, takenBy: store.who.name });
    expect(await store.takenPlan('season-1', 2)).toEqual(second);
    const text = await exportArchive(store);
    expect(await throughAnEmptyFile(text)).toBe(text);
    expect((await store.takenPlans('season-1')).map(({ number }) => number)).toEqual([1, 2]);
  });

  test('restores the log byte for byte, struck sets and removed gear that it names included', async () => {
    await store.importRecords(smallClub());
    const { sets } = await store.logSets([
      squatSet({ dayId: 'day-1' }),
      squatSet({ order: 7, note: '=\u2028' }),
    ]);
    await store.strikeSet(sets[1]!.id);
    for (const [kind, id] of [
      ['best', 'best-1'],
      ['day', 'day-1'],
      ['rack', 'rack-1'],
    ] as const) {
      await store.remove(kind, id);
    }
    // Another rack may have the removed one's label since.
    await store.create('rack', { label: 'Window rack', lifts: ['squat'] });
    const text = await exportArchive(store);
    expect(await throughAnEmptyFile(text)).toBe(text);
    const archive = JSON.parse(text);
    expect(archive.sets).toHaveLength(2);
    expect(archive.sets[0].dayId).toBeNull();
    expect(archive.former.map(({ record }: { record: { id: string } }) => record.id)).toEqual([
      'anchor-1',
      'hookup-1',
      'rack-1',
    ]);
  });

  test('of version 1, which knew no log, is restored without one', async () => {
    const text = await writeArchive({ records: smallClub(), ...nothingBeside });
    const { sets: _sets, former: _former, ...before } = JSON.parse(text);
    await store.importRecords(smallClub());
    await store.logSets([squatSet()]);
    await restoreArchive(store, [JSON.stringify({ ...before, version: 1 })]);
    expect(await exportArchive(store)).toBe(text);
  });

  test(`restores byte for byte whatever the records hold${takesNul ? '' : ', but for the character NUL'}`, async () => {
    const lists = fc.record({
      disc: fc.uniqueArray(arbitraryRecord('disc'), { maxLength: 5, selector: ({ id }) => id }),
      lifter: fc.uniqueArray(arbitraryRecord('lifter'), { maxLength: 5, selector: ({ id }) => id }),
      box: fc.array(arbitraryRecord('box'), { maxLength: 1 }),
    });
    await fc.assert(
      fc.asyncProperty(lists, async (given) => {
        const records = {
          ...smallClub(),
          ...given,
          ...Object.fromEntries([...kindsOwnedBy('lifter'), 'day', 'comparison'].map((kind) => [kind, []])),
        };
        fc.pre(takesNul || !JSON.stringify(given).includes('\\u0000'));
        const text = await writeArchive({ records, ...nothingBeside });
        expect(await throughAnEmptyFile(text)).toBe(text);
      }),
      { numRuns: 15 },
    );
  });

  test('of before heights had a bar path is restored without one', async () => {
    const text = await writeArchive({ records: smallClub(), ...nothingBeside });
    const before = text.replaceAll('"bottomForwardM":null,', '');
    expect(before).not.toContain('bottomForwardM');
    expect(await throughAnEmptyFile(before)).toBe(text);
  });

  test('leaves out what was removed', async () => {
    await store.importRecords(smallClub());
    await store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', {});
    await store.remove('day', 'day-1');
    await store.remove('box', 'box-1');
    const { records, prescriptions } = JSON.parse(await exportArchive(store));
    expect([records.day, records.box, prescriptions]).toEqual([[], [], []]);
  });

  test('keeps what it replaces in a file beside the club’s', async () => {
    await store.create('bar', { label: 'Old bar', massKg: 20 });
    const before = await exportArchive(store);
    const text = await writeArchive({ records: smallClub(), ...nothingBeside });
    const { keptAs, seq } = await restoreArchive(store, [text]);
    expect(await keptText(keptAs)).toBe(before);
    expect(await exportArchive(store)).toBe(text);
    expect(seq).toBe(await store.latestSeq());
  });

  test('keeps whatever is written while it replaces: each is in the kept archive or in the new club', async () => {
    const text = await writeArchive({ records: smallClub(), ...nothingBeside });
    const restoring = restoreArchive(store, [text]);
    const written: string[] = [];
    for (let i = 0; i < 30; i += 1) {
      const { record } = await store.create('bar', { label: `Bar ${i}`, massKg: 20 });
      written.push(record.id);
      // Other work has its turn too.
      await new Promise((resolve) => setImmediate(resolve));
    }
    const { keptAs } = await restoring;
    const kept = [...idsIn(await keptText(keptAs)), ...idsIn(await exportArchive(store))];
    expect(written.filter((id) => !kept.includes(id))).toEqual([]);
  });

  test('keeps the log and the plans that it replaces', async () => {
    await store.importRecords(smallClub());
    await store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { plan: 1 });
    await store.addTakenPlan('season-1', '2026-11-25T05:00:00.000Z', { plan: 2 });
    await store.logSets([squatSet(), squatSet()]);
    const before = await exportArchive(store);
    const { keptAs } = await restoreArchive(store, [
      await writeArchive({ records: smallClub(), ...nothingBeside }),
    ]);
    expect(await keptText(keptAs)).toBe(before);
    expect(await throughAnEmptyFile(before)).toBe(before);
  });

  test('replaces nothing where what was there cannot be kept, and keeps nothing where it is refused', async () => {
    await store.importRecords(smallClub());
    const before = await exportArchive(store);
    const content = { records: { ...smallClub(), bar: [] }, ...nothingBeside };
    await expect(store.replaceAll({ ...content, records: smallClub() }, full)).rejects.toThrow('full');
    const filesBefore = readdirSync(dirname(store.path));
    const refused = restoreArchive(store, [await writeArchive(content)]);
    await expect(refused).rejects.toMatchObject({ reason: 'invalid' });
    expect(readdirSync(dirname(store.path))).toEqual(filesBefore);
    expect(await exportArchive(store)).toBe(before);
  });

  const prescription = {
    id: 'p',
    dayId: 'day-9',
    number: 1,
    solvedAt: '2026-11-25T05:00:00.000Z',
    document: {},
  };
  const keptSet = { ...squatSet(), id: 's', order: 1, loggedAt: '2026-11-25T05:00:00.000Z' };
  test.each([
    ['no JSON', () => '{', ''],
    ['another document', () => JSON.stringify({ records: {} }), 'format'],
    ['nothing but null', () => 'null', 'format'],
    ['a later version', () => JSON.stringify({ ...good, version: archiveVersion + 1 }), 'version'],
    ['an unknown field', () => JSON.stringify({ ...good, extra: 1 }), 'extra'],
    [
      'a wrong value',
      () =>
        JSON.stringify({
          ...good,
          records: { ...smallClub(), bar: [{ ...smallClub().bar[0], massKg: 0 }] },
        }),
      'records.bar[0].massKg',
    ],
    [
      'a missing owner',
      () => JSON.stringify({ ...good, records: { ...smallClub(), lifter: [] } }),
      'lifterId',
    ],
    [
      'a reading of a slack band',
      () => {
        const { bandReading } = smallClub();
        const slack = [{ ...bandReading[0], lengthM: 1.04 }];
        return JSON.stringify({ ...good, records: { ...smallClub(), bandReading: slack } });
      },
      'lengthM',
    ],
    [
      'a set of no lifter',
      () => JSON.stringify({ ...good, sets: [{ ...keptSet, lifterId: 'x' }] }),
      'lifterId',
    ],
    [
      'a set that stands there twice',
      () => JSON.stringify({ ...good, sets: [1, 2].map((order) => ({ ...keptSet, order })) }),
      'id',
    ],
    [
      'gear of old with an id that is in use',
      () => JSON.stringify({ ...good, former: [{ kind: 'bar', record: smallClub().bar[0] }] }),
      'id',
    ],
    ['a prescription of no day', () => JSON.stringify({ ...good, prescriptions: [prescription] }), 'dayId'],
  ])('is refused whole for %s', async (_why, text, field) => {
    await store.importRecords(smallClub());
    const before = await exportArchive(store);
    await expect(restoreArchive(store, [text()])).rejects.toMatchObject({ reason: 'invalid', field });
    expect(await exportArchive(store)).toBe(before);
  });
});
