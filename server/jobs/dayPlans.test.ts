import { expect, test } from 'vitest';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { Day } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { dayPlans } from './dayPlans.ts';
import { fakeRun } from './tests/fakeRun.ts';

const records = smallClub();
const day = records.day[0] as Day;
const plan = {} as DayPlan;
const estimate = () => ({}) as StrengthEstimate;

function counted() {
  let times = 0;
  const { byLog } = dayPlans(
    fakeRun({
      planByLog: async ({ estimates }) => {
        times += 1;
        return { ...plan, told: estimates.length } as DayPlan & { told: number };
      },
    }),
  );
  const tell = (number: number, of: Day, estimates: StrengthEstimate[]) =>
    byLog({ number, records, day: of, plan, estimates });
  return { tell, times: () => times };
}

test('a plan is told again only when an estimate has come or changed, or the plan is another', async () => {
  const { tell, times } = counted();
  const [one, other] = [estimate(), estimate()];
  const first = await tell(1, day, [one]);
  expect(await tell(1, day, [one])).toBe(first);
  expect(times()).toBe(1);
  expect(await tell(1, day, [one, other])).toEqual({ told: 2 });
  await tell(1, day, [one, estimate()]);
  await tell(2, day, [one, other]);
  await tell(2, { ...day, id: 'day-2' }, [one, other]);
  expect(times()).toBe(5);
});

test('what failed is tried again', async () => {
  let fails = true;
  const { byLog } = dayPlans(
    fakeRun({
      planByLog: async () => {
        if (fails) throw new Error('no thread');
        return plan;
      },
    }),
  );
  const asked = { number: 1, records, day, plan, estimates: [] };
  await expect(byLog(asked)).rejects.toThrow('no thread');
  fails = false;
  expect(await byLog(asked)).toBe(plan);
});

test('two who ask for the loads of a day at one state of the club are told by one run, and after a change by another', async () => {
  let times = 0;
  const { solve } = dayPlans(
    fakeRun({
      solveDay: async () => {
        times += 1;
        return { ...plan };
      },
    }),
  );
  const known = { records, day, estimates: [estimate()], awaited: [] };
  const [first, second] = await Promise.all([solve({ ...known, seq: 1 }), solve({ ...known, seq: 1 })]);
  expect(first).toBe(second);
  expect(times).toBe(1);
  expect(await solve({ ...known, seq: 2 })).not.toBe(first);
  expect(await solve({ ...known, seq: 2, awaited: ['lifter-1'] })).not.toBe(first);
  expect(times).toBe(3);
});
