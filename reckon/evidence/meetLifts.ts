import type { Equipment, Lift } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { grouped } from '#core/numeric/grouped.ts';

/** The heaviest made attempt of a lifter in a lift at one meet. */
export interface MeetLift {
  lifterId: string;
  lift: Lift;
  equipment: Equipment;
  doneOn: string;
  barKg: number;
}

/** Two meets of a lifter in a lift, one after the other. */
export interface MeetStep {
  before: MeetLift;
  after: MeetLift;
}

export function meetLifts(sets: readonly LoggedSet[], bests: readonly Best[]): MeetLift[] {
  const made = [
    ...sets.filter(({ struckAt, platform, made }) => struckAt === null && platform && made > 0),
    ...bests.filter(({ platform }) => platform),
  ];
  return [...grouped(made, ({ lifterId, lift, doneOn }) => `${lifterId} ${lift} ${doneOn}`).values()]
    .map((attempts) => {
      const best = attempts.reduce((a, b) => (b.setup.barKg > a.setup.barKg ? b : a));
      const { lifterId, lift, equipment, doneOn, setup } = best;
      return { lifterId, lift, equipment, doneOn, barKg: setup.barKg };
    })
    .filter(({ barKg }) => barKg > 0)
    .sort((a, b) => a.doneOn.localeCompare(b.doneOn));
}

/** Every step from one meet to the next, those between kinds of equipment apart: they cannot be compared. */
export function meetSteps(meets: readonly MeetLift[]): { same: MeetStep[]; changed: MeetStep[] } {
  const steps = [...grouped(meets, ({ lifterId, lift }) => `${lifterId} ${lift}`).values()].flatMap((list) =>
    list.slice(1).map((after, i) => ({ before: list[i]!, after })),
  );
  const isSame = ({ before, after }: MeetStep) => before.equipment === after.equipment;
  return { same: steps.filter(isSame), changed: steps.filter((step) => !isSame(step)) };
}
