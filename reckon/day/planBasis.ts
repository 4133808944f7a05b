import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day, Group, Place } from '#contract/records/day.ts';
import { clubBasis, lifterBasis } from '#reckon/basis/basisRecords.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';

/**
 * A short mark of everything that a day's loads rest on: the same as long as nothing of it has changed. A plan carries the
 * mark of its making, so that a sheet on the wall can be told from what would be worked out today. Titles, notes, who
 * is away, what was planned and units of display do not count.
 */
export function planBasis(records: ClubRecords, { date, oneSetPull, groups }: Day): string {
  const lifterIds = new Set(groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId)));
  return fingerprint([
    ...ofDay({ date, oneSetPull, groups }),
    clubBasis(records, 'plan'),
    lifterBasis(records, 'plan', lifterIds),
  ]);
}

/** What of the day itself its loads rest on. */
export function ofDay({ date, oneSetPull, groups }: Pick<Day, 'date' | 'oneSetPull' | 'groups'>): unknown[] {
  return [date, oneSetPull, groups.map(whatCounts)];
}

function whatCounts({ away: _away, planned: _planned, places, ...group }: Group) {
  return { ...group, title: '', places: places.map(placeThatCounts) };
}

/** As it was written before lifters could aim at more than their group, where one does not. */
function placeThatCounts({ note: _note, moreShare, ...place }: Place) {
  return moreShare === 0 ? place : { ...place, moreShare };
}
