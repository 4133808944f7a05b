import type { Setup } from '#contract/records/lift.ts';
import { type LoggedSet, nothingSeen } from '#contract/records/loggedSet.ts';

/** A logged single of a made-up lifter in the straight squat; `change` says what differs. */
export function loggedSquat(
  id: string,
  doneOn: string,
  barKg: number,
  change: Partial<LoggedSet> & { with?: Partial<Setup> } = {},
): LoggedSet {
  const { with: rigging, ...fields } = change;
  return {
    id,
    lifterId: 'short',
    doneOn,
    lift: 'squat',
    equipment: 'raw',
    setup: {
      rackId: null,
      start: { way: 'free', heightM: null },
      barKg,
      bands: [],
      chains: [],
      ...rigging,
    },
    reps: 1,
    made: 1,
    ...nothingSeen,
    platform: false,
    place: '',
    dayId: null,
    planNumber: null,
    note: '',
    order: 1,
    loggedAt: `${doneOn}T18:00:00Z`,
    struckAt: null,
    ...fields,
  };
}
