import { dateAt } from '#contract/calendar/dateAt.ts';
import { dateText } from '#contract/words/dateText.ts';
import { clockTime } from '#contract/words/dayWords.ts';

/** A moment by the club's clock: "25 Nov 2026, 06:12". */
export function momentText(moment: string, timeZone: string): string {
  return `${dateText(dateAt(new Date(moment), timeZone))}, ${clockTime(moment, timeZone)}`;
}
