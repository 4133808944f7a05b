import { expect, onTestFinished, test, vi } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import type { Told } from '#contract/words/doing.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { newClubPath } from '#store/tests/newClubPath.ts';
import { openClub } from '#store/tests/openClub.ts';
import { readingDoorOf, throughDoor } from './clubDoor.ts';
import type { Workplace } from './job.ts';
import { work } from './jobs.ts';

/** Where jobs run that open no club. */
const here = (tell: Workplace['tell']): Workplace => ({
  tell,
  throughDoor: () => Promise.reject(new Error('No door here.')),
});

test('a day is solved by the clock: once time is up the best so far is told, with how far it could be from the best', async () => {
  const records = millraceClub('2026-11-25');
  const day = records.day.find(({ title }) => title.startsWith('Speed'))!;
  const clock = vi.spyOn(Date, 'now');
  onTestFinished(() => clock.mockRestore());
  clock.mockImplementation(() => 86_400_000 * clock.mock.calls.length);
  const asked = { records, day, estimates: [], awaited: [] };
  const { groups } = await work.jobs.solveDay.run(
    asked,
    here(() => {}),
  );
  expect(groups[0]!.proof).toMatchObject({ status: 'timeLimit' });
  expect(groups[0]!.proof!.gap).toBeGreaterThan(0);
});

test('a day that is solved tells each lifter in turn and that the gear is shared out, from nothing to all of it', async () => {
  const records = millraceClub('2026-11-25');
  const day = records.day.find(({ title }) => title.startsWith('Speed'))!;
  const told: Told[] = [];
  const asked = { records, day, estimates: [], awaited: [] };
  await work.jobs.solveDay.run(
    asked,
    here((done, total, doing) => told.push({ done, total, doing: doing ?? null })),
  );
  const [group] = day.groups;
  const of = group!.places.length;
  expect(told.slice(0, of + 1).map(({ doing }) => doing)).toEqual([
    ...group!.places.map((_, i) => ({ code: 'ranking', at: i + 1, of })),
    { code: 'sharing', group: group!.title },
  ]);
  expectOnwards(told);
});

test('evidence that is weighed tells how much of the log is read, then each question, from nothing to nearly all of it', async () => {
  const told: Told[] = [];
  const records = twoLifters();
  const log = Array.from({ length: 120 }, (_, i) => loggedSquat(`${i}`, dateOf(i), 100 + (i % 7)));
  const store = await openClub(newClubPath());
  onTestFinished(() => store.close());
  await store.importRecords(records, { sets: log });
  const tell: Workplace['tell'] = (done, total, doing) => told.push({ done, total, doing: doing ?? null });
  await work.jobs.weighEvidence.run({ door: readingDoorOf(store), label: null }, { tell, throughDoor });
  const codes = told.map(({ doing }) => doing!.code);
  expect(codes.slice(0, -5)).toEqual(Array(5).fill('readingLog'));
  expect(codes.slice(-5)).toEqual(Array(5).fill('question'));
  expectOnwards(told);
});

const dateOf = (days: number) => new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10);

/** Never back, never beyond, and the whole stays the whole. */
function expectOnwards(told: readonly Told[]) {
  const shares = told.map(({ done, total }) => done / total);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(shares[0]).toBe(0);
  expect(shares.at(-1)).toBeLessThanOrEqual(1);
  expect(shares.at(-1)).toBeGreaterThan(0.8);
  expect(new Set(told.map(({ total }) => total)).size).toBe(1);
}
