import { mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TextPieces } from '#contract/json/cutLists.ts';
import { exportArchive, restoreArchive } from '../archive.ts';
import { copyNamed, keptCopies, snapshotFolderOf, snapshotName } from '../copies/keptCopies.ts';
import { readCopy } from '../copies/readCopy.ts';
import { isWholeFile, restoreFile } from '../copies/restoreFile.ts';
import { KEPT_DAYS, KEPT_HOURS, snapshotsToKeep } from '../copies/snapshotsToKeep.ts';
import { takeSnapshot } from '../copies/takeSnapshot.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

async function smallClubInFile() {
  const path = newClubPath();
  const store = await openClub(path);
  await store.importRecords(smallClub());
  await store.logSets([squatSet()]);
  return { path, folder: snapshotFolderOf(path), store };
}

const joined = async (archive: Iterable<string>) => [...archive].join('');

describe('a snapshot', () => {
  test('holds the club as it stood, log of changes and all, for its owner alone, and nothing half is left beside it', async () => {
    const { path, folder, store } = await smallClubInFile();
    const before = await exportArchive(store);
    const { name } = await takeSnapshot(path, folder);
    await store.create('bar', { label: 'Later', massKg: 20 });
    const [copy, ...others] = await keptCopies(path, folder);
    expect(others).toEqual([]);
    expect(copy).toMatchObject({ name, kind: 'snapshot', seq: 2 });
    expect((await stat(copy!.path)).mode & 0o077).toBe(0);
    expect((await stat(folder)).mode & 0o077).toBe(0);
    expect(await readdir(folder)).toEqual([name]);
    expect(await readCopy(copy!, 'club', tester, joined)).toBe(before);
    // Looking into it left it as it was.
    expect(await readdir(folder)).toEqual([name]);
    const file = new SqliteFile(copy!.path, { readonly: true });
    expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(file.prepare('select count(*) from "change"').pluck().get()).toBe(2);
    file.close();
    await store.close();
  });

  test('of a file that is damaged is refused in one sentence, and no copy is left', async () => {
    const { path, folder, store } = await smallClubInFile();
    await store.close();
    const bytes = await readFile(path);
    bytes.fill(0xa5, 4096, 4096 * 6);
    await writeFile(path, bytes);
    await expect(takeSnapshot(path, folder)).rejects.toThrow(/^No snapshot was taken into .*damaged/);
    expect(await readdir(folder)).toEqual([]);
  });

  test('makes no folder but its own: a second disk that is not there is not filled in on the first', async () => {
    const { path, store } = await smallClubInFile();
    const away = join(dirname(path), 'disk', 'snapshots');
    await expect(takeSnapshot(path, away)).rejects.toThrow('there is no such folder.');
    await store.close();
  });

  test('goes where it is sent, and the list knows it from others and from what is none', async () => {
    const { path, store } = await smallClubInFile();
    const folder = join(dirname(path), 'disk');
    await mkdir(folder);
    const { name } = await takeSnapshot(path, folder);
    for (const other of ['other.sqlite', `other.${name}`, `${name}-wal`])
      await writeFile(join(folder, other), '');
    expect((await keptCopies(path, folder)).map((copy) => copy.name)).toEqual([name]);
    for (const wrong of ['', '..', `../${name}`, 'other.sqlite'])
      await expect(copyNamed(path, folder, wrong)).rejects.toMatchObject({ reason: 'missing' });
    await store.close();
  });

  test('of years stay the last of each of the newest hours and days, and older ones go as new ones come', async () => {
    const { path, folder, store } = await smallClubInFile();
    await mkdir(folder);
    const hours = 24 * 20;
    const newest = Date.parse('2026-11-30T05:40:00.000Z');
    for (let i = 1; i <= hours; i += 1)
      await writeFile(join(folder, snapshotName(path, new Date(newest - i * 3_600_000), i)), '');
    await takeSnapshot(path, folder);
    const left = await keptCopies(path, folder);
    // Of the newest hours some are in days that would stay anyway.
    expect(left.length).toBeGreaterThan(KEPT_HOURS);
    expect(left.length).toBeLessThanOrEqual(KEPT_HOURS + KEPT_DAYS);
    await store.close();
  });
});

const hourOf = (instant: string) => Math.floor(Date.parse(instant) / 3_600_000);
const dayOf = (instant: string) => Math.floor(Date.parse(instant) / 86_400_000);

describe('what stays of snapshots', () => {
  const instants = fc
    .array(fc.integer({ min: 0, max: 60 * 24 * 60 }), { maxLength: 80 })
    .map((minutes) => minutes.map((at) => new Date(Date.UTC(2026, 8, 1) + at * 60_000).toISOString()));

  test('is the newest of all, a last one of every new enough hour and day, and no more than their number', () => {
    fc.assert(
      fc.property(instants, (takenAt) => {
        const stay = snapshotsToKeep(takenAt);
        const newest = takenAt.toSorted().at(-1);
        if (newest !== undefined) expect(stay).toContain(newest);
        expect(stay.size).toBeLessThanOrEqual(KEPT_HOURS + KEPT_DAYS);
        const days = [...new Set(takenAt.map(dayOf))].toSorted((a, b) => b - a).slice(0, KEPT_DAYS);
        const hours = [...new Set(takenAt.map(hourOf))].toSorted((a, b) => b - a).slice(0, KEPT_HOURS);
        expect([...stay].map(dayOf)).toEqual(expect.arrayContaining(days));
        expect([...stay].map(hourOf)).toEqual(expect.arrayContaining(hours));
        // Whatever goes has a newer one of its hour, or is of an old one and has a newer one of its day, or is of an old day.
        for (const gone of takenAt.filter((instant) => !stay.has(instant))) {
          const isLastOf = (of: (instant: string) => number) =>
            !takenAt.some((other) => of(other) === of(gone) && other > gone);
          if (hours.includes(hourOf(gone))) expect(isLastOf(hourOf)).toBe(false);
          if (days.includes(dayOf(gone))) expect(isLastOf(dayOf)).toBe(false);
        }
      }),
    );
  });

  test('is the same again once the others are gone', () => {
    fc.assert(
      fc.property(instants, (takenAt) => {
        const stay = snapshotsToKeep(takenAt);
        expect(snapshotsToKeep([...stay])).toEqual(stay);
      }),
    );
  });
});

test('a club that another took the place of is in the list, and comes back from there', async () => {
  const { path, folder, store } = await smallClubInFile();
  const restored = (archive: TextPieces) => restoreArchive(store, archive);
  const before = await exportArchive(store);
  const { name } = await takeSnapshot(path, folder);
  await store.create('bar', { label: 'Later', massKg: 20 });
  const later = await exportArchive(store);
  await readCopy(await copyNamed(path, folder, name), 'club', tester, restored);
  expect(await exportArchive(store)).toBe(before);
  const [replaced] = (await keptCopies(path, folder)).filter(({ kind }) => kind === 'replaced');
  await readCopy(replaced!, 'club', tester, restored);
  expect(await exportArchive(store)).toBe(later);
  expect((await keptCopies(path, folder)).filter(({ kind }) => kind === 'replaced')).toHaveLength(2);
  await store.close();
});

test('a damaged file is moved aside as it is, and a snapshot in its place takes back even what was changed before it', async () => {
  const { path, folder, store } = await smallClubInFile();
  const { seq } = await store.create('bar', { label: 'Twice', massKg: 20 });
  const { name } = await takeSnapshot(path, folder);
  await store.close();
  expect(isWholeFile(path)).toBe(true);
  const bytes = await readFile(path);
  bytes.fill(0xa5, 4096, 4096 * 6);
  await writeFile(path, bytes);
  expect(isWholeFile(path)).toBe(false);
  const copy = await copyNamed(path, folder, name);
  const aside = await restoreFile(path, copy, { clubId: 'club', who: tester });
  expect(await readFile(aside!)).toEqual(bytes);
  expect(isWholeFile(path)).toBe(true);
  expect((await stat(path)).mode & 0o077).toBe(0);
  const again = await openClub(path);
  await again.undo(seq);
  expect((await again.list('bar')).map(({ label }) => label)).not.toContain('Twice');
  await again.close();
});
