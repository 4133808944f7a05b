import { expect, test } from 'vitest';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { Day } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { keptPlans } from './keptPlans.ts';

const records = smallClub();
const day = records.day[0] as Day;
const plan = {} as DayPlan;
const estimate = () => ({}) as StrengthEstimate;

function counted() {
  let times = 0;
  const tell = keptPlans(async (_records, _day, _plan, estimates) => {
    times += 1;
    return { ...plan, told: estimates.length } as DayPlan & { told: number };
  });
  return { tell, times: () => times };
}

test('a plan is told again only when an estimate has come or changed, or the plan is another', async () => {
  const { tell, times } = counted();
  const [one, other] = [estimate(), estimate()];
  const first = await tell(1, records, day, plan, [one]);
  expect(await tell(1, records, day, plan, [one])).toBe(first);
  expect(times()).toBe(1);
  expect(await tell(1, records, day, plan, [one, other])).toEqual({ told: 2 });
  await tell(1, records, day, plan, [one, estimate()]);
  await tell(2, records, day, plan, [one, other]);
  await tell(2, records, { ...day, id: 'day-2' }, plan, [one, other]);
  expect(times()).toBe(5);
});

test('what failed is tried again', async () => {
  let fails = true;
  const tell = keptPlans(async () => {
    if (fails) throw new Error('no thread');
    return plan;
  });
  await expect(tell(1, records, day, plan, [])).rejects.toThrow('no thread');
  fails = false;
  expect(await tell(1, records, day, plan, [])).toBe(plan);
});
