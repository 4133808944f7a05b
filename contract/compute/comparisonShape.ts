import { z } from 'zod';
import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { baselineDays } from '#contract/records/outcome.ts';
import { LEAST_WEEKS, MOST_WEEKS, startProblem } from '#contract/records/planProblem.ts';
import { mass } from './fields.ts';

/** What plan and report of a comparison share: names, days, tests. */
export const label = z.string().trim().min(1).max(80);
export const day = z.iso.date();
export const weeks = z.int().min(LEAST_WEEKS).max(MOST_WEEKS);
export const ways = z
  .array(label)
  .length(2)
  .refine(([first, second]) => first !== second, 'it must be two ways with different names');
export const test = {
  lifterId: label,
  on: day,
  value_kg: mass.describe('What was lifted, or the estimate of that day'),
};
export const mostLifters = 200;
/** Everybody tested every day of the longest comparison and of the time before it that counts: no club's log holds more. */
export const mostTests = mostLifters * (7 * MOST_WEEKS + Math.max(...Object.values(baselineDays)) + 1);

/** Refuses a first day after which there is no date for the last. */
export function refuseLate(
  { startsOn, weeks }: { startsOn: string; weeks: number },
  context: z.core.$RefinementCtx,
): void {
  const message = startProblem(startsOn, weeks);
  if (message !== null) context.addIssue({ code: 'custom', path: ['startsOn'], message });
}

/** Refuses a lifter who is named twice. */
export function refuseTwice(
  lifters: readonly { lifterId: string }[],
  field: string,
  context: z.core.$RefinementCtx,
): void {
  lifters.forEach(({ lifterId }, i) => {
    if (lifters.findIndex((one) => one.lifterId === lifterId) === i) return;
    context.addIssue({ code: 'custom', path: [field, i, 'lifterId'], message: 'it must be named once only' });
  });
}

export function weeksFrom(startsOn: string, on: string): number {
  return (dayNumber(on) - dayNumber(startsOn)) / 7;
}

/** A difference of logarithms in per cent. */
export function asPercent(ln: number): number {
  return 100 * Math.expm1(ln);
}
