import { daysLater } from '#contract/words/dayWords.ts';

const WEEKS_AHEAD = 4;

/** The day that a meet ahead is taken to be on until somebody names it: four weeks from today. */
export function usualMeetDay(today: string): string {
  return daysLater(today, 7 * WEEKS_AHEAD);
}
