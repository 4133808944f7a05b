import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { snapshotFolderOf } from '#store/copies/keptCopies.ts';
import { takeSnapshot } from '#store/copies/takeSnapshot.ts';
import { openStore } from '#store/openStore.ts';
import { newClubPath } from '#store/tests/newClubPath.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { openOneClub } from './oneClub.ts';

const who = { name: 'a test' };
const fill = async (club: { importRecords: Awaited<ReturnType<typeof openOneClub>>['importRecords'] }) => {
  await club.importRecords(smallClub());
};

test('a club that is made is there with all that fills it, for its owner alone, and nothing is left beside it', async () => {
  const path = newClubPath();
  const club = await openOneClub(path, who, fill);
  expect(await club.list('lifter')).toEqual(smallClub().lifter);
  await club.close();
  expect(readdirSync(dirname(path))).toEqual(['club.sqlite']);
  expect(statSync(path).mode & 0o777).toBe(0o600);
});

test('whoever is killed while a club is made leaves no file of that name, and the next start makes it whole', async () => {
  const path = newClubPath();
  const script = fileURLToPath(new URL('./tests/foundAndHang.ts', import.meta.url));
  const child = spawn(process.execPath, ['--import', 'tsx', script, path], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await once(child.stdout, 'data');
  child.kill('SIGKILL');
  await once(child, 'close');
  expect(existsSync(path)).toBe(false);
  const club = await openOneClub(path, who, fill);
  onTestFinished(() => club.close());
  expect(await club.list('disc')).toEqual(smallClub().disc);
  // What the other left goes with the next start.
  expect(readdirSync(dirname(path)).filter((name) => name.includes('making'))).toEqual([]);
});

test('a club that cannot be filled is not there', async () => {
  const path = newClubPath();
  const full = new Error('no room');
  const making = openOneClub(path, who, async (club) => {
    await fill(club);
    throw full;
  });
  await expect(making).rejects.toBe(full);
  expect(readdirSync(dirname(path))).toEqual([]);
});

test('two who make the same club at once open the same one', async () => {
  const path = newClubPath();
  const [first, second] = await Promise.all([openOneClub(path, who, fill), openOneClub(path, who)]);
  onTestFinished(() => Promise.all([first.close(), second.close()]).then(() => {}));
  const { record } = await first.create('bar', { label: 'Third bar', massKg: 20 });
  expect(await second.get('bar', record.id)).toEqual(record);
});

test('a file with the tables of a club and no club is not filled without a word', async () => {
  const path = newClubPath();
  await (await openStore(path)).close();
  await expect(openOneClub(path, who, fill)).rejects.toMatchObject({
    message: expect.stringContaining('holds no club'),
  });
});

test('a folder in the place of the file is named', async () => {
  const path = newClubPath();
  mkdirSync(path);
  await expect(openOneClub(path, who)).rejects.toThrow();
});

test('where a club was and its file is gone no empty one is made: the copies that are kept are named', async () => {
  const path = newClubPath();
  const club = await openOneClub(path, who, fill);
  const { name } = await takeSnapshot(path, snapshotFolderOf(path));
  await club.close();
  rmSync(path);
  const refused = expect.objectContaining({
    reason: 'unavailable',
    message: expect.stringMatching(
      new RegExp(`${path} is gone, .*${name}: "rackwright restore newest" .*--club`),
    ),
  });
  await expect(openOneClub(path, who, fill)).rejects.toEqual(refused);
  expect(existsSync(path)).toBe(false);
});

test('what a server that was killed left beside a file that is gone is not put into a new club', async () => {
  const [served, path] = [newClubPath(), newClubPath()];
  const club = await openOneClub(served, who, fill);
  // As it lies beside the file while the server runs: whoever opens a file takes in what stands in the log beside it.
  copyFileSync(`${served}-wal`, `${path}-wal`);
  await club.close();
  await expect(openOneClub(path, who)).rejects.toMatchObject({
    reason: 'unavailable',
    message: expect.stringMatching(/club\.sqlite-wal, which holds what was saved last/),
  });
  expect(readdirSync(dirname(path))).toEqual(['club.sqlite-wal']);
});
