import { type CalendarAsked, calendarEntries, firstName } from '#contract/calendarFile/calendarEntries.ts';
import { calendarText } from '#contract/calendarFile/calendarText.ts';
import { historyAfter, noHistory } from '#contract/calendarFile/dayHistory.ts';
import type { Club } from '#contract/records/club.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** The club's calendar as a file, of everybody or of one lifter: the same bytes as long as the club is the same, in one year. */
export type ClubCalendar = (lifter?: Lifter) => Promise<string>;

/**
 * Writes the calendar as it is asked for, and once only as long as the club stays as it is, however many telephones ask. What the log of
 * changes tells of days and meets is read once and gone on from.
 */
export function clubCalendar(store: ClubStore): ClubCalendar {
  let known = noHistory;
  const written = new Map<string, { state: string; text: string }>();
  async function history() {
    for (;;) {
      const changes = await store.changesTouching(
        ['club', 'day', 'meet', 'seasonEntry'],
        known.seq,
        changesAtOnce,
      );
      if (changes.length === 0) return known;
      // Somebody else may have read on meanwhile.
      if (changes[0]!.seq > known.seq) known = historyAfter(known, changes);
    }
  }
  async function write(years: Years, lifter: Lifter | undefined): Promise<string> {
    const told = await history();
    const [clubs, day, lifters, meet, seasonEntry] = await Promise.all([
      store.list('club'),
      store.list('day'),
      store.list('lifter'),
      store.list('meet'),
      store.list('seasonEntry'),
    ]);
    const club = clubs as [Club];
    const entries = calendarEntries({ club, day, lifter: lifters, meet, seasonEntry }, told, {
      ...years,
      lifterId: lifter?.id,
    });
    return calendarText(club[0], entries, lifter && club[0].namesInCalendar ? firstName(lifter.name) : '');
  }
  return async (lifter) => {
    const years = yearsAround(await store.today());
    // Asked before anything is read: what is done meanwhile is written next time.
    const state = `${await store.latestSeq()} ${years.from}`;
    const kept = written.get(lifter?.id ?? '');
    if (kept?.state === state) return kept.text;
    const text = await write(years, lifter);
    written.set(lifter?.id ?? '', { state, text });
    return text;
  };
}

/** So that nobody waits long for a log of many years. */
const changesAtOnce = 100;

type Years = Pick<CalendarAsked, 'from' | 'to'>;

/** A calendar begins with the year before and ends with the one after next, so that it is another only at New Year. */
function yearsAround(today: string): Years {
  const year = Number(today.slice(0, 4));
  return { from: `${year - 1}-01-01`, to: `${year + 2}-12-31` };
}
