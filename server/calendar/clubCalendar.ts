import { calendarEntries, firstName } from '#contract/calendarFile/calendarEntries.ts';
import { calendarText } from '#contract/calendarFile/calendarText.ts';
import { historyAfter, noHistory } from '#contract/calendarFile/dayHistory.ts';
import type { Club } from '#contract/records/club.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** The club's calendar as a file, of everybody or of one lifter: the same bytes as long as the club is the same, in one year. */
export type ClubCalendar = (lifter?: Lifter) => Promise<string>;

/** Writes the calendar as it is asked for. What the log of changes tells of the days is read once and gone on from. */
export function clubCalendar(store: ClubStore): ClubCalendar {
  let known = noHistory;
  async function history() {
    for (;;) {
      const changes = await store.changesTouching(['club', 'day'], known.seq, changesAtOnce);
      if (changes.length === 0) return known;
      // Somebody else may have read on meanwhile.
      if (changes[0]!.seq > known.seq) known = historyAfter(known, changes);
    }
  }
  return async (lifter) => {
    const told = await history();
    const [clubs, day, lifters, today] = await Promise.all([
      store.list('club'),
      store.list('day'),
      store.list('lifter'),
      store.today(),
    ]);
    const club = clubs as [Club];
    const asked = { ...yearsAround(today), lifterId: lifter?.id };
    const entries = calendarEntries({ club, day, lifter: lifters }, told, asked);
    return calendarText(club[0], entries, lifter && club[0].namesInCalendar ? firstName(lifter.name) : '');
  };
}

/** So that nobody waits long for a log of many years. */
const changesAtOnce = 100;

/** A calendar begins with the year before and ends with the one after next, so that it is another only at New Year. */
function yearsAround(today: string): { from: string; to: string } {
  const year = Number(today.slice(0, 4));
  return { from: `${year - 1}-01-01`, to: `${year + 2}-12-31` };
}
