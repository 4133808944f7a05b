import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { millraceClub } from '#demo/millraceClub.ts';

export const TODAY = '2026-11-25';
const FROM = '2026-11-30';

/** A season of an invented club of which nobody's plan is another's: each lifter is away on a day of their own. Every fourth goes to a meet halfway, all to one at the end. */
export function yearOf(lifters: number, weeks: number): ClubRecords {
  const club = millraceClub(TODAY);
  const names = Array.from({ length: lifters }, (_, at) => club.lifter[at % club.lifter.length]!);
  const on = (days: number) => dateOfDay(dayNumber(FROM) + days);
  return {
    ...club,
    lifter: names.map((lifter, at) => ({ ...lifter, id: `lifter-${at}` })),
    best: names.flatMap(({ id }, at) =>
      club.best
        .filter(({ lifterId }) => lifterId === id)
        .map((best) => ({ ...best, lifterId: `lifter-${at}` })),
    ),
    bodyMass: names.flatMap(({ id }, at) =>
      club.bodyMass
        .filter(({ lifterId }) => lifterId === id)
        .map((mass) => ({ ...mass, lifterId: `lifter-${at}` })),
    ),
    meet: [0.5, 1].map((part, at) => ({
      id: `meet-${at}`,
      title: `Meet ${at}`,
      date: on(7 * Math.round(part * weeks) - 2),
      note: '',
    })),
    season: [{ id: 'year', title: 'Year', methodId: club.method[0]!.id, fromOn: FROM, note: '' }],
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
