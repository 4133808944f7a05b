import { readFile } from 'node:fs/promises';
import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writeArchive } from '#contract/archive/writeArchive.ts';
import { arbitraryRecord } from '#contract/tests/arbitraryRecord.ts';
import { exportArchive, restoreArchive } from '../archive.ts';
import type { ClubStore } from '../ClubStore.ts';
import { databases } from './databases.ts';
import { smallClub } from './smallClub.ts';

describe.each(databases)('an archive on $name', ({ open }) => {
  let store: ClubStore;
  let dispose: () => Promise<void>;
  beforeEach(async () => {
    ({ store, dispose } = await open());
  });
  afterEach(() => dispose());

  async function throughAnEmptyFile(text: string): Promise<string> {
    const empty = await open();
    await restoreArchive(empty.store, text);
    const again = await exportArchive(empty.store);
    await empty.dispose();
    return again;
  }

  test('restores byte for byte, prescriptions included', async () => {
    await store.importRecords(smallClub());
    await store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { z: 1, a: [{ y: null, b: 0.1 }] });
    await store.addPrescription('day-1', '2026-11-25T06:00:00.000Z', { 'é\u2028"': 'x' });
    const text = await exportArchive(store);
    expect(await throughAnEmptyFile(text)).toBe(text);
    expect(JSON.parse(text).prescriptions).toHaveLength(2);
  });

  test('restores byte for byte whatever the records hold', async () => {
    const lists = fc.record({
      disc: fc.uniqueArray(arbitraryRecord('disc'), { maxLength: 5, selector: ({ id }) => id }),
      lifter: fc.uniqueArray(arbitraryRecord('lifter'), { maxLength: 5, selector: ({ id }) => id }),
      box: fc.array(arbitraryRecord('box'), { maxLength: 1 }),
    });
    await fc.assert(
      fc.asyncProperty(lists, async (given) => {
        const records = { ...smallClub(), ...given, bodyMass: [], liftHeights: [], best: [], day: [] };
        const text = writeArchive({ records, prescriptions: [] });
        expect(await throughAnEmptyFile(text)).toBe(text);
      }),
      { numRuns: 15 },
    );
  });

  test('of before heights had a bar path is restored without one', async () => {
    const text = writeArchive({ records: smallClub(), prescriptions: [] });
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

  test('keeps what it replaces as an archive beside the file', async () => {
    await store.create('bar', { label: 'Old bar', massKg: 20 });
    const before = await exportArchive(store);
    const text = writeArchive({ records: smallClub(), prescriptions: [] });
    const { keptAs, seq } = await restoreArchive(store, text);
    expect(await readFile(keptAs, 'utf8')).toBe(before);
    expect(await exportArchive(store)).toBe(text);
    expect(seq).toBe(await store.latestSeq());
  });

  const good = JSON.parse(writeArchive({ records: smallClub(), prescriptions: [] }));
  const prescription = {
    id: 'p',
    dayId: 'day-9',
    number: 1,
    solvedAt: '2026-11-25T05:00:00.000Z',
    document: {},
  };
  test.each([
    ['no JSON', () => '{', ''],
    ['another document', () => JSON.stringify({ records: {} }), 'format'],
    ['nothing but null', () => 'null', 'format'],
    ['a later version', () => JSON.stringify({ ...good, version: 2 }), 'version'],
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
    ['a prescription of no day', () => JSON.stringify({ ...good, prescriptions: [prescription] }), 'dayId'],
  ])('is refused whole for %s', async (_why, text, field) => {
    await store.importRecords(smallClub());
    const before = await exportArchive(store);
    await expect(restoreArchive(store, text())).rejects.toMatchObject({ reason: 'invalid', field });
    expect(await exportArchive(store)).toBe(before);
  });
});
