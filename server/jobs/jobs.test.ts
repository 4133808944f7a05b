import { expect, onTestFinished, test, vi } from 'vitest';
import { millraceClub } from '#demo/millraceClub.ts';
import { work } from './jobs.ts';

test('a day is solved by the clock: once time is up the best so far is told, with how far it could be from the best', async () => {
  const records = millraceClub('2026-11-25');
  const day = records.day.find(({ title }) => title.startsWith('Speed'))!;
  const clock = vi.spyOn(Date, 'now');
  onTestFinished(() => clock.mockRestore());
  clock.mockImplementation(() => 86_400_000 * clock.mock.calls.length);
  const { groups } = await work.jobs.solveDay.run({ records, day, estimates: [], awaited: [] });
  expect(groups[0]!.proof).toMatchObject({ status: 'timeLimit' });
  expect(groups[0]!.proof!.gap).toBeGreaterThan(0);
});
