import { lastDayAhead } from '#contract/projection/lastDayAhead.ts';
import { dateText } from '#contract/words/dateText.ts';

/** What is wrong with the day of a meet ahead, in one sentence; null where nothing is. */
export function wrongMeetDay(on: string, today: string): string | null {
  if (on === '') return 'Day of the meet is needed.';
  const last = lastDayAhead(today);
  if (today <= on && on <= last) return null;
  return `Day of the meet is ${dateText(on)}; allowed is today, ${dateText(today)}, to ${dateText(last)}.`;
}
