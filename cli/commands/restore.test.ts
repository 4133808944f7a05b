import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { callCli } from '../tests/callCli.ts';

async function clubInFile() {
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-restore-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const club = join(folder, 'club.sqlite');
  const store = await openOneClub(club, { name: 'a test' });
  await store.importRecords(smallClub());
  await store.close();
  const call = (command: string, ...args: string[]) => callCli([command, '--club', club, ...args]);
  const bars = async () => {
    const open = await openOneClub(club, { name: 'a test' });
    const labels = (await open.list('bar')).map(({ label }) => label);
    await open.close();
    return labels;
  };
  return { club, call, bars };
}

test('a snapshot is taken, listed and restored by one command each, and what it replaces is a copy that comes back', async () => {
  const { club, call, bars } = await clubInFile();
  const before = await bars();
  expect(await call('snapshot', '--list')).toMatchObject({
    status: 0,
    stdout: 'No copy of this club is kept yet.\n',
  });
  expect(await call('snapshot')).toMatchObject({ status: 0, stderr: '' });
  const store = await openOneClub(club, { name: 'a test' });
  await store.create('bar', { label: 'Later', massKg: 20 });
  await store.close();
  const restored = await call('restore', 'newest');
  expect(restored).toMatchObject({ status: 0, stderr: '' });
  expect(restored.stdout).toContain('What was there until now is kept in');
  expect(await bars()).toEqual(before);
  const { stdout } = await call('snapshot', '--list');
  const replaced = /until it was replaced.*?(\S+\.sqlite)/.exec(stdout)![1]!;
  expect((await call('restore', replaced)).status).toBe(0);
  expect(await bars()).toContain('Later');
  expect(await call('restore', 'another')).toMatchObject({
    status: 2,
    stderr: expect.stringContaining(replaced),
  });
});

test('where the file of the club is damaged or gone the newest snapshot takes its place, and the damaged one stays', async () => {
  const { club, call, bars } = await clubInFile();
  const before = await bars();
  await call('snapshot');
  const bytes = await readFile(club);
  bytes.fill(0xa5, 0, 4096 * 4);
  await writeFile(club, bytes);
  const damaged = await call('restore', 'newest');
  expect(damaged).toMatchObject({ status: 0, stderr: '' });
  const aside = /The damaged file is now (.*)\.\n/.exec(damaged.stdout)![1]!;
  expect(await readFile(aside)).toEqual(bytes);
  expect(await bars()).toEqual(before);
  await rm(club);
  expect(await call('restore', 'newest')).toMatchObject({ status: 0, stderr: '' });
  expect(existsSync(club)).toBe(true);
  expect(await bars()).toEqual(before);
});
