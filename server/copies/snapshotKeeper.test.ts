import { readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { expect, onTestFinished, test } from 'vitest';
import { work } from '#server/jobs/jobs.ts';
import { runHere } from '#server/jobs/runHere.ts';
import { workThreads } from '#server/jobs/threads.ts';
import { testApp } from '#server/tests/testApp.ts';
import { keptCopies, snapshotName } from '#store/copies/keptCopies.ts';
import { readCopy } from '#store/copies/readCopy.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { snapshotKeeper } from './snapshotKeeper.ts';

const anHourMs = 3_600_000;

async function kept() {
  const { store, folder: house } = await testApp(smallClub());
  const folder = join(house, 'snapshots');
  const keeper = () => snapshotKeeper(store, runHere(store), folder);
  const names = async () => (await keptCopies(store.path, folder)).map(({ name }) => name);
  return { store, folder, keeper, names };
}

test('a program that is started takes a snapshot where the last is an hour old and something was changed since, and only then', async () => {
  const { store, folder, keeper, names } = await kept();
  const { name } = await keeper().take();
  await rm(join(folder, name));
  const at = (hoursAgo: number, seq: number) =>
    writeFile(join(folder, snapshotName(store.path, new Date(Date.now() - hoursAgo * anHourMs), seq)), '');
  const taken = async () => {
    const one = keeper();
    onTestFinished(() => one.stop());
    const before = await names();
    await one.takeWhereDue();
    const after = await names();
    return after.length - before.length;
  };
  const seq = await store.latestSeq();
  await at(2, seq);
  expect(await taken()).toBe(0);
  await store.create('disc', { faceMassKg: 5, pairs: 1 });
  expect(await taken()).toBe(1);
  await store.create('disc', { faceMassKg: 2.5, pairs: 1 });
  expect(await taken()).toBe(0);
  for (const left of await readdir(folder)) await rm(join(folder, left));
  // A clock that was put back leaves snapshots that seem to come from later.
  await at(-5, seq);
  expect(await taken()).toBe(1);
});

test('while a snapshot is taken in its thread, others write, and it holds the club as it stood at one moment', async () => {
  const { store, folder } = await kept();
  const threads = workThreads(work);
  onTestFinished(threads.close);
  const keeper = snapshotKeeper(store, threads.run, folder);
  const seen = { isTaken: false };
  const taking = keeper.take().finally(() => {
    seen.isTaken = true;
  });
  let written = 0;
  for (; !seen.isTaken; written += 1) {
    await store.create('disc', { faceMassKg: 5, pairs: 1 });
    // Answers of threads are heard between two turns of the loop of events.
    await setImmediate();
  }
  await taking;
  expect(written).toBeGreaterThan(0);
  const [copy] = await keptCopies(store.path, folder);
  const archive = JSON.parse(
    await readCopy(copy!, store.clubId, store.who, async (pieces) => [...pieces].join('')),
  );
  // Each change but the first added one.
  expect(archive.records.disc.length - smallClub().disc.length).toBe(copy!.seq! - 1);
});

test('why a snapshot could not be taken is told until one is, and whoever listens hears of both', async () => {
  const { folder, keeper } = await kept();
  const one = keeper();
  const heard: (string | null)[] = [];
  one.onNews(() => heard.push(one.fault()));
  await writeFile(folder, '');
  const why = /^No snapshot was taken into .*\.$/;
  await expect(one.take()).rejects.toThrow(why);
  expect(one.fault()).toMatch(why);
  await rm(folder);
  await one.take();
  expect(one.fault()).toBeNull();
  expect(heard).toEqual([expect.stringMatching(why), null]);
});
