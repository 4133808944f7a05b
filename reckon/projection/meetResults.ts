import type { Equipment, Lift } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { grouped } from '#core/numeric/grouped.ts';

/** What a lifter did in one lift at one meet. */
export interface MeetResult {
  lifterId: string;
  lift: Lift;
  equipment: Equipment;
  on: string;
  place: string;
  /** The heaviest that was made: the day's maximum was no less. Null: all were missed. */
  madeKg: number | null;
  /** The lightest that was missed above it: the maximum was less. Null: none was. */
  missedKg: number | null;
  /** Every attempt that was logged, in order. */
  attempts: { barKg: number; made: boolean }[];
}

/** Every lift of every meet, oldest first, from logged attempts and from results written down as bests. */
export function meetResults(log: readonly LoggedSet[], bests: readonly Best[]): MeetResult[] {
  const sets = log.filter(({ platform, struckAt }) => platform && struckAt === null);
  const tries = [
    ...sets.map((set) => ({ ...set, isMade: set.made > 0, order: set.order as number | null })),
    ...bests.filter(({ platform }) => platform).map((best) => ({ ...best, isMade: true, order: null })),
  ];
  return [...grouped(tries, ({ lifterId, lift, doneOn }) => `${doneOn} ${lifterId} ${lift}`).entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, lifts]) => {
      const { lifterId, lift, equipment, doneOn } = lifts[0]!;
      const made = lifts.filter(({ isMade }) => isMade).map(({ setup }) => setup.barKg);
      const madeKg = made.length === 0 ? null : Math.max(...made);
      const missed = lifts
        .filter(({ isMade, setup }) => !isMade && setup.barKg > (madeKg ?? 0))
        .map(({ setup }) => setup.barKg);
      return {
        lifterId,
        lift,
        equipment,
        on: doneOn,
        place: lifts.find(({ place }) => place !== '')?.place ?? '',
        madeKg,
        missedKg: missed.length === 0 ? null : Math.min(...missed),
        attempts: lifts
          .flatMap(({ order, isMade, setup }) => (order === null ? [] : [{ order, isMade, setup }]))
          .sort((a, b) => a.order - b.order)
          .map(({ isMade, setup }) => ({ barKg: setup.barKg, made: isMade })),
      };
    });
}
