import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { keptFolderOf } from '#server/jobs/keptAnswers.ts';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { callCli } from '../tests/callCli.ts';

test('rebuild works everybody out anew beside the club, --only-forget throws it away, and the club stays as it was', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-rebuild-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const club = join(folder, 'club.sqlite');
  const store = await openOneClub(club, { name: 'a test' });
  await store.importRecords(smallClub());
  const before = await store.records();
  const rebuild = (...args: string[]) => callCli(['rebuild', '--club', club, ...args]);
  const done = await rebuild();
  expect(done).toMatchObject({ status: 0, stderr: '' });
  // The small club has one best, in one lift of one lifter.
  expect(done.stdout).toMatch(/1 lift in all\.\n$/);
  expect(existsSync(keptFolderOf(club))).toBe(true);
  expect(await rebuild('--only-forget')).toMatchObject({ status: 0, stderr: '' });
  expect(existsSync(keptFolderOf(club))).toBe(false);
  expect(await store.records()).toEqual(before);
  await store.close();
});
