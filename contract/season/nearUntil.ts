import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { Club } from '#contract/records/club.ts';
import type { Method } from '#contract/records/method.ts';
import { counted } from '#contract/words/counted.ts';

type Says = Pick<Club, 'nearWeeks'> | undefined;
type MethodSays = Pick<Method, 'nearWeeks'>;

/** Where neither club nor method says. Common practice, no source. */
export const usualNearWeeks = 2;

/** The last day that is worked out to bar and bands by itself: so many weeks from today as the club says, else the method; null: none is. */
export function nearUntil(club: Says, method: MethodSays, today: string): string | null {
  const weeks = nearWeeks(club, method);
  return weeks === 0 ? null : dateOfDay(dayNumber(today) + 7 * weeks - 1);
}

/** How many weeks that are, and who says so. */
export function nearWeeksSentence(club: Says, method: MethodSays): string {
  const weeks = nearWeeks(club, method);
  const who = ofClub(club) !== null ? "the club's settings say" : 'the method says';
  const whence = ofClub(club) === null && method.nearWeeks === undefined ? 'as is usual' : `as ${who}`;
  return weeks === 0
    ? `No week is worked out to bar and bands before its day, ${whence}.`
    : `From today, ${counted(weeks, 'week')} ${weeks === 1 ? 'is' : 'are'} worked out to bar and bands, ${whence}.`;
}

function nearWeeks(club: Says, method: MethodSays): number {
  return ofClub(club) ?? method.nearWeeks ?? usualNearWeeks;
}

function ofClub(club: Says): number | null {
  return club?.nearWeeks ?? null;
}
