import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { kindsOwnedBy } from '#contract/records/ownRecords.ts';
import { millraceLog } from '#demo/history/millraceLog.ts';
import { millraceClub } from '#demo/millraceClub.ts';

/** The day on which the club of the measurements is looked at. */
export const TODAY = '2026-11-25';
export const CLUB: ClubSize = { lifters: 40, sets: 100_000 };

export interface ClubSize {
  lifters: number;
  sets: number;
}

interface OfLifter {
  id: string;
  lifterId: string | null;
}

/**
 * The invented club's two years, its lifters repeated with other heights until there are enough, and their sets likewise, alike ones
 * within a session. Its days are those of its first lifters.
 */
export function bigClub(
  { lifters, sets: count } = CLUB,
  today = TODAY,
): { records: ClubRecords; sets: LoggedSet[] } {
  const club = millraceClub(today);
  const log = millraceLog(club, today);
  const copies = Array.from({ length: lifters }, (_, i) => ({
    from: club.lifter[i % club.lifter.length]!.id,
    suffix: `-${Math.floor(i / club.lifter.length)}`,
    taller: 1 + 0.01 * Math.floor(i / club.lifter.length),
  }));
  const ownOf = <T extends OfLifter>(all: readonly T[]) =>
    copies.flatMap(({ from, suffix, taller }) =>
      all
        .filter(({ lifterId }) => lifterId === from)
        .map((own) => ({ own: { ...own, id: own.id + suffix, lifterId: from + suffix }, taller })),
    );
  const sets = ownOf(log).map(({ own }) => own);
  const times = count / sets.length;
  return {
    records: {
      ...club,
      lifter: copies.map(({ from, suffix }) => {
        const lifter = club.lifter.find(({ id }) => id === from)!;
        return { ...lifter, id: from + suffix, name: lifter.name + suffix };
      }),
      ...Object.fromEntries(
        kindsOwnedBy('lifter').map((kind) => [kind, ownOf<OfLifter>(club[kind]).map(({ own }) => own)]),
      ),
      // Its people are known by other ids here.
      comparison: [],
      takenOut: [],
      liftHeights: ownOf(club.liftHeights).map(({ own, taller }) => ({
        ...own,
        bottomM: taller * own.bottomM,
        lockoutM: taller * own.lockoutM,
      })),
      day: club.day.map((day) => ({
        ...day,
        groups: day.groups.map((group) => ({
          ...group,
          places: group.places.map((place) => ({ ...place, lifterId: `${place.lifterId}-0` })),
        })),
      })),
    },
    sets: sets.flatMap((set, i) =>
      Array.from({ length: Math.floor((i + 1) * times) - Math.floor(i * times) }, (_, k) => ({
        ...set,
        id: `${set.id}-${k}`,
        order: 20 * set.order + k,
        dayId: null,
        planNumber: null,
      })),
    ),
  };
}
