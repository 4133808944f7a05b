import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { millraceClub } from '#demo/millraceClub.ts';

export const TODAY = '2026-11-25';
const FROM = '2026-11-30';

/**
 * A season of an invented club of which nobody's plan is another's: each lifter is away on a day of their own. Every fourth goes to a meet halfway,
 * all to one at the end. Nothing in it names a lifter who is not there, so that a store takes it too.
 */
export function yearOf(lifters: number, weeks: number, fromOn = FROM): ClubRecords {
  const club = millraceClub(TODAY);
  const names = Array.from({ length: lifters }, (_, at) => club.lifter[at % club.lifter.length]!);
  const on = (days: number) => dateOfDay(dayNumber(fromOn) + days);
  const ofEach = <Kept extends { id: string; lifterId: string }>(kept: readonly Kept[]) =>
    names.flatMap(({ id }, at) =>
      kept
        .filter(({ lifterId }) => lifterId === id)
        .map((one) => ({ ...one, id: `${one.id}-${at}`, lifterId: `lifter-${at}` })),
    );
  return {
    ...club,
    lifter: names.map((lifter, at) => ({ ...lifter, id: `lifter-${at}` })),
    best: ofEach(club.best),
    bodyMass: ofEach(club.bodyMass),
    liftHeights: [],
    restriction: [],
    day: [],
    comparison: [],
    takenOut: [],
    meet: [0.5, 1].map((part, at) => ({
      id: `meet-${at}`,
      title: `Meet ${at}`,
      date: on(7 * Math.round(part * weeks) - 2),
      note: '',
    })),
    season: [{ id: 'year', title: 'Year', methodId: club.method[0]!.id, fromOn, note: '' }],
    seasonEntry: names.map((_, at) => ({
      id: `entry-${at}`,
      seasonId: 'year',
      lifterId: `lifter-${at}`,
      meetIds: at % 4 === 0 ? ['meet-0', 'meet-1'] : ['meet-1'],
      classes: [],
    })),
    absence: names.map((_, at) => ({
      id: `away-${at}`,
      lifterId: `lifter-${at}`,
      fromOn: on(at),
      untilOn: on(at),
      why: 'away',
    })),
    plannedByHand: [],
  };
}
