import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { kindsOwnedBy } from '#contract/records/ownRecords.ts';
import { millraceLog } from '#demo/history/millraceLog.ts';
import { millraceClub } from '#demo/millraceClub.ts';

/** The day on which the club of the measurements is looked at. */
export const TODAY = '2026-11-25';
export const CLUB = { lifters: 40, sets: 100_000 };

interface OfLifter {
  id: string;
  lifterId: string;
}

/**
 * The invented club's two years, its lifters repeated with other heights until they are forty and their sets until they are 100 000,
 * alike ones within a session.
 */
export function bigClub(): { records: ClubRecords; sets: LoggedSet[] } {
  const club = millraceClub(TODAY);
  const log = millraceLog(club, TODAY);
  const copies = Array.from({ length: CLUB.lifters }, (_, i) => ({
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
  const times = CLUB.sets / sets.length;
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
      liftHeights: ownOf(club.liftHeights).map(({ own, taller }) => ({
        ...own,
        bottomM: taller * own.bottomM,
        lockoutM: taller * own.lockoutM,
      })),
      day: [],
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
