import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { localDate } from '#contract/records/kind.ts';
import { Refusal } from '#store/Refusal.ts';

/** A week is named by its Monday. */
export function refuseNoMonday(monday: string): void {
  if (localDate.safeParse(monday).success && mondayOf(monday) === monday) return;
  const sentence = `monday is "${monday}"; it must be the date of a Monday, as 2026-11-30.`;
  throw new Refusal('invalid', 'monday', sentence);
}
