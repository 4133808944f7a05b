import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { type JobName, type RunWork, work } from '#server/jobs/jobs.ts';
import { forgetKept, keptAnswers, keptFolderOf } from '#server/jobs/keptAnswers.ts';
import { workThreads } from '#server/jobs/threads.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { wholeOf } from '#store/tests/wholeOf.ts';
import { strengthEstimator } from './strengthEstimator.ts';

const TODAY = '2026-11-25';
const TOMORROW = '2026-11-26';
const days = ['2026-11-02', '2026-11-06', '2026-11-09', '2026-11-13', '2026-11-16', '2026-11-20'];
const straight = (barKg: number) => ({ start: { way: 'free' }, barKg });
const single = (barKg: number, doneOn: string) =>
  squatSet({ setup: straight(barKg), doneOn, reps: 2, made: 2, repsInReserve: 2 });

/** A club of which everything was worked out; `start` begins anew on its file, and tells by which jobs it then works. */
async function clubWithLog() {
  const { store } = await testApp(smallClub());
  const { sets } = await store.logSets(days.flatMap((day, i) => [single(90 + i, day), single(95 + i, day)]));
  async function start(reckoning = 'as it is') {
    const threads = workThreads(work);
    const works: JobName[] = [];
    const run: RunWork = (name, asked, how) => {
      works.push(name);
      return threads.run(name, asked, how);
    };
    const keepIn = keptAnswers(store.path, reckoning);
    const estimator = strengthEstimator(store, run, { goesOn: true, keepIn });
    onTestFinished(async () => {
      estimator.stop();
      await threads.close();
    });
    return {
      works,
      estimator,
      async known(on = TODAY) {
        await estimator.ofClub(on);
        const known = await estimator.ofLifter('lifter-1', on);
        await keepIn.written();
        return known;
      },
    };
  }
  const before = await (await start()).known();
  return { store, sets, start, before };
}

function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile());
}

test('a server that is started again has the very estimates of before, and works nothing out', async () => {
  const { start, before } = await clubWithLog();
  const { known, works, estimator } = await start();
  await estimator.bringUpToDate(TODAY);
  expect(await estimator.summaries()).toMatchObject([{ maxKg: before[0]!.maxKg, upToDate: true }]);
  expect(await known()).toEqual(before);
  expect(works).toEqual([]);
});

test('what was logged meanwhile is taken in alone, and what is struck takes the whole log', async () => {
  const { store, sets, start, before } = await clubWithLog();
  await store.logSets([single(97, TODAY)]);
  const { works, estimator } = await start();
  const [now] = await estimator.ofLifter('lifter-1', TODAY);
  expect(now).toMatchObject({ setCount: before[0]!.setCount + 1, takenIn: 1 });
  expect(works.slice(0, 2)).toEqual(['rememberLift', 'takeIn']);
  await estimator.ofClub(TODAY);
  await store.strikeSet(sets.at(-1)!.id);
  const after = await start();
  expect((await after.estimator.ofLifter('lifter-1', TODAY))[0]!.takenIn).toBe(0);
  expect(after.works).toContain('weighLift');
});

test('one whose sets were only taken in when the server ended is weighed by its whole log', async () => {
  const { store, start } = await clubWithLog();
  await store.logSets([single(97, TODAY)]);
  const first = await start();
  await first.estimator.bringUpToDate(TODAY);
  expect((await first.estimator.ofLifter('lifter-1', TODAY))[0]!.takenIn).toBe(1);
  first.estimator.stop();
  const { known } = await start();
  expect((await known())[0]!.takenIn).toBe(0);
});

test('on the next morning yesterday is shown at once as what it is, and carried over without reading a log', async () => {
  const { start, before } = await clubWithLog();
  const { known, works, estimator } = await start();
  await estimator.bringUpToDate(TOMORROW);
  expect(await estimator.summaries()).toMatchObject([{ on: TODAY, upToDate: false }]);
  const [now] = await known(TOMORROW);
  expect(now!.on).toBe(TOMORROW);
  expect(now!.maxKg.median / before[0]!.maxKg.median).toBeCloseTo(1, 2);
  expect(await estimator.summaries()).toMatchObject([{ on: TOMORROW, upToDate: true }]);
  expect(works).not.toContain('weighLift');
  // Nothing was logged since it was learned what to expect of everybody.
  expect(works.filter((name) => name === 'believeAnew')).toHaveLength(1);
});

test('answers of another program are thrown away, and so are those of another club in the place of this one', async () => {
  const { store, start } = await clubWithLog();
  const other = await start('another');
  await other.known();
  expect(other.works).toContain('weighLift');
  const again = await start('another');
  await again.known();
  expect(again.works).toEqual([]);
  const { records, ...rest } = await wholeOf(store);
  await store.importRecords(records, rest);
  const replaced = await start('another');
  await replaced.known();
  expect(replaced.works).toContain('weighLift');
});

test('a damaged file is noticed and worked out anew, whichever byte of it; all may be thrown away', async () => {
  const { store, start, before } = await clubWithLog();
  const files = filesOf(keptFolderOf(store.path));
  expect(files.length).toBeGreaterThan(3);
  for (const [i, path] of files.entries()) {
    const bytes = readFileSync(path);
    const at = Math.floor((bytes.length * (i + 1)) / (files.length + 1));
    bytes[at]! ^= 1;
    writeFileSync(path, bytes);
  }
  const damaged = await start();
  expect(await damaged.known()).toEqual(before);
  expect(damaged.works).toContain('weighLift');
  forgetKept(store.path);
  const anew = await start();
  expect(await anew.known()).toEqual(before);
  expect(anew.works).toContain('weighLift');
});

test('what is kept is for its owner alone', async () => {
  const { store } = await clubWithLog();
  const folder = keptFolderOf(store.path);
  for (const path of [folder, ...filesOf(folder)]) expect(statSync(path).mode & 0o077).toBe(0);
});
