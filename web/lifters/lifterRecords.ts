import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { Best, Lifter } from '#contract/records/lifters.ts';
import { type OwnRecords, ownRecords } from '#contract/records/ownRecords.ts';

/** All that the club keeps of one lifter, by kind. */
export interface LifterRecords extends OwnRecords<'lifter'> {
  lifter: Lifter;
}

/** Gathers one lifter's records; null where there is no such lifter. */
export function lifterRecords(club: ClubRecords, lifterId: string): LifterRecords | null {
  const lifter = club.lifter.find((candidate) => candidate.id === lifterId);
  return lifter === undefined ? null : { lifter, ...ownRecords(club, 'lifter', lifterId) };
}

/** The heaviest straight, full lift of the records: no band, no chain, free start; null where there is none. */
export function straightBest(bests: readonly Best[], lift: Lift): Best | null {
  const straight = bests.filter(
    (best) =>
      best.lift === lift &&
      (best.setup.start.way === 'free' || best.setup.start.way === 'paused') &&
      best.setup.bands.length === 0 &&
      best.setup.chains.length === 0,
  );
  return straight.reduce<Best | null>(
    (top, best) => (top && top.setup.barKg >= best.setup.barKg ? top : best),
    null,
  );
}
