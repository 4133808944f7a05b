import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { Best, BodyMass, Lifter, LiftHeights, Restriction } from '#contract/records/lifters.ts';

/** All that the club keeps of one lifter, newest first. */
export interface LifterRecords {
  lifter: Lifter;
  masses: BodyMass[];
  heights: LiftHeights[];
  bests: Best[];
  /** Those that end last first; without an end before all. */
  restrictions: Restriction[];
}

/** Gathers one lifter's records; null where there is no such lifter. */
export function lifterRecords(club: ClubRecords, lifterId: string): LifterRecords | null {
  const lifter = club.lifter.find((candidate) => candidate.id === lifterId);
  if (lifter === undefined) return null;
  const own = <R extends { lifterId: string }>(records: readonly R[]) =>
    records.filter((record) => record.lifterId === lifterId);
  return {
    lifter,
    masses: own(club.bodyMass).sort((a, b) => b.takenOn.localeCompare(a.takenOn)),
    heights: own(club.liftHeights).sort((a, b) => a.lift.localeCompare(b.lift) || a.bottomM - b.bottomM),
    bests: own(club.best).sort((a, b) => b.doneOn.localeCompare(a.doneOn)),
    restrictions: own(club.restriction).sort((a, b) => endOf(b).localeCompare(endOf(a))),
  };
}

/** Later than any date where there is none. */
function endOf({ untilOn }: Restriction): string {
  return untilOn ?? '9999';
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
