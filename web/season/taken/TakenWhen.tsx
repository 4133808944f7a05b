import { dateAt } from '#contract/calendar/dateAt.ts';
import type { TakenHead } from '#contract/season/seasonOffer.ts';
import { dateText } from '#contract/words/dateText.ts';
import { useClubSettings } from '#web/api/useClub.ts';

/** ", taken on 30 Nov 2026 by Ida". */
export function TakenWhen({ head: { takenAt, takenBy } }: { head: TakenHead }) {
  const { timeZone } = useClubSettings();
  return `, taken on ${dateText(dateAt(new Date(takenAt), timeZone))}${takenBy === null ? '' : ` by ${takenBy}`}`;
}
