import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { Method } from '#contract/records/method.ts';

/** Where a method does not say. Common practice, no source. */
export const usualNearWeeks = 2;

/** The last day that is worked out to bar and bands by itself, so many weeks from today; null: none is. */
export function nearUntil(
  { nearWeeks = usualNearWeeks }: Pick<Method, 'nearWeeks'>,
  today: string,
): string | null {
  return nearWeeks === 0 ? null : dateOfDay(dayNumber(today) + 7 * nearWeeks - 1);
}
