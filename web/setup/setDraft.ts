import { type Lift, type Setup, setup } from '#contract/records/lift.ts';
import { type GivenSet, type LoggedSet, nothingSeen } from '#contract/records/loggedSet.ts';
import { fieldIn, quantityLimits } from '#web/parts/limits.ts';

/** A set as it is being typed: the bar, and who lifted it, may be missing yet. */
export type SetDraft = Omit<GivenSet, 'setup' | 'lifterId'> & {
  lifterId: string | null;
  setup: Omit<Setup, 'barKg'> & { barKg: number | null };
};

/** A set with nothing on the bar and nothing known of it. */
export function emptySet(lift: Lift, doneOn: string): SetDraft {
  return {
    lifterId: null,
    doneOn,
    lift,
    equipment: 'raw',
    setup: { ...bare, barKg: null },
    reps: 1,
    made: 1,
    ...nothingSeen,
    platform: false,
    place: '',
    dayId: null,
    planNumber: null,
    note: '',
    order: null,
  };
}

/** What may be on the bar. */
export const barLimits = quantityLimits(fieldIn(setup.shape, 'barKg'));

/** Nothing beside the bar; what another lift begins with. */
export const bare = {
  rackId: null,
  start: { way: 'free', heightM: null },
  bands: [],
  chains: [],
} satisfies Omit<Setup, 'barKg'>;

/** A logged set as one would enter it again, in its place in the order. */
export function givenAgain({ id: _id, loggedAt: _at, struckAt: _struck, ...given }: LoggedSet): GivenSet {
  return given;
}
