import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { houseIn } from '../houseIn.ts';
import { openSqlite } from '../open/sqlite.ts';
import { Refusal } from '../Refusal.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub, tester } from './openClub.ts';

/** Another connection to the file, as another program has one; it takes the lock and lets it go. */
function holder(path: string) {
  const file = new Database(path);
  onTestFinished(() => void file.close());
  return { take: () => file.exec('begin immediate'), release: () => file.exec('rollback') };
}

const bar = (label: string) => ({ label, massKg: 20 });
const turns = async (count: number) => {
  for (let i = 0; i < count; i += 1) await new Promise((resolve) => setImmediate(resolve));
};

test('while something else holds the file, everything is read, and writes wait in their order', async () => {
  const path = newClubPath();
  const store = await openClub(path);
  onTestFinished(() => store.close());
  const { take, release } = holder(path);
  take();
  const landed: string[] = [];
  const writes = ['first', 'second', 'third'].map((label) =>
    store.create('bar', bar(label)).then(({ record }) => landed.push(record.label)),
  );
  await turns(20);
  expect(landed).toEqual([]);
  expect(await store.list('bar')).toEqual([]);
  expect(await store.records()).toMatchObject({ seq: 0 });
  release();
  await Promise.all(writes);
  expect(landed).toEqual(['first', 'second', 'third']);
  expect((await store.changesAfter(0)).map(({ entries }) => entries[0]?.after)).toMatchObject(
    landed.map(bar),
  );
});

test('a file that is held too long is named in one sentence; nothing was changed, and later writes go on', async () => {
  const path = newClubPath();
  const house = await houseIn(await openSqlite(path, { patienceMs: 30 }));
  onTestFinished(() => house.close());
  await house.found('club');
  const store = await house.forClub('club', tester);
  const { take, release } = holder(path);
  take();
  const refused = await Promise.all([1, 2, 3].map((i) => store.create('bar', bar(`${i}`)).catch((e) => e)));
  for (const error of refused) {
    expect(error).toBeInstanceOf(Refusal);
    expect(error).toMatchObject({ reason: 'unavailable', message: expect.stringContaining(path) });
  }
  release();
  await store.create('bar', bar('later'));
  expect(await store.list('bar')).toMatchObject([{ label: 'later' }]);
});

test('a write waits for what this program itself takes in, however long that is; and for nothing else', async () => {
  const path = newClubPath();
  const house = await houseIn(await openSqlite(path, { patienceMs: 0 }));
  onTestFinished(() => house.close());
  await house.found('club');
  const store = await house.forClub('club', tester);
  const { take, release } = holder(path);
  const landed: string[] = [];
  const large = store.behindWrites(async () => {
    take();
    const writes = ['first', 'second'].map((label) =>
      store.create('bar', bar(label)).then(({ record }) => landed.push(record.label)),
    );
    await turns(50);
    expect(landed).toEqual([]);
    release();
    await Promise.all(writes);
  });
  await large;
  expect(landed).toEqual(['first', 'second']);
  take();
  await expect(store.create('bar', bar('third'))).rejects.toThrow(path);
  release();
});

test.runIf(process.platform === 'linux')(
  'a file that another process holds is told with its command and number; one that this process holds, as that',
  async () => {
    const path = newClubPath();
    await (await openClub(path)).close();
    const house = await houseIn(await openSqlite(path, { patienceMs: 30 }));
    onTestFinished(() => house.close());
    const store = await house.forClub('club', tester);
    const script = fileURLToPath(new URL('./lockUntilKilled.mjs', import.meta.url));
    const child = spawn(process.execPath, [script, path], { stdio: ['ignore', 'pipe', 'inherit'] });
    onTestFinished(() => void child.kill('SIGKILL'));
    await once(child.stdout, 'data');
    const refused = store.create('bar', bar('one'));
    await expect(refused).rejects.toThrow(
      new RegExp(`lockUntilKilled\\.mjs.* \\(process ${child.pid}\\)\\. Nothing`),
    );
    child.kill('SIGKILL');
    await once(child, 'close');
    const { take, release } = holder(path);
    take();
    await expect(store.create('bar', bar('two'))).rejects.toThrow('this program itself');
    release();
    await store.create('bar', bar('three'));
  },
);

test('a file that is held while it is opened is waited for, and named where that takes too long', async () => {
  const path = newClubPath();
  await (await openClub(path)).close();
  const { take, release } = holder(path);
  take();
  await expect(openSqlite(path, { patienceMs: 30 }).then(houseIn)).rejects.toMatchObject({
    reason: 'unavailable',
    message: expect.stringContaining(path),
  });
  const opening = openClub(path);
  await turns(20);
  release();
  const store = await opening;
  expect(await store.list('club')).toHaveLength(1);
  await store.close();
});
