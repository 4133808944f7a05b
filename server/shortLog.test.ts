import { expect, onTestFinished, test, vi } from 'vitest';
import { newClubPath } from '#store/tests/newClubPath.ts';
import { openClub } from '#store/tests/openClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { type RunWork, work } from './jobs/jobs.ts';
import { keepLogShort } from './shortLog.ts';

test('the log is emptied once after many changes, again after more, and no longer once nobody wants it', async () => {
  const store = await openClub(newClubPath());
  onTestFinished(() => store.close());
  await store.importRecords(smallClub());
  const ran: string[] = [];
  const run = (async (name: 'emptyLog', asked: { path: string; mark: string | null }) => {
    ran.push(name);
    return work.jobs[name].run(asked);
  }) as RunWork;
  vi.useFakeTimers();
  onTestFinished(() => void vi.useRealTimers());
  const faults: unknown[] = [];
  const stop = keepLogShort(store, run, (error) => faults.push(error));
  const logMany = async () => {
    for (let i = 0; i < 5; i += 1) await store.logSets([squatSet()]);
    await vi.runAllTimersAsync();
  };
  await logMany();
  expect(ran).toEqual(['emptyLog']);
  await logMany();
  expect(ran).toEqual(['emptyLog', 'emptyLog']);
  stop();
  await logMany();
  expect(ran).toHaveLength(2);
  expect(faults).toEqual([]);
});
