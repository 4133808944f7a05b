import type { Given } from '../ClubStore.ts';
import { smallClub } from './smallClub.ts';

/** A set of the small club, given as a coach enters it; with bands and chains. */
export function squatSet(fields: Given = {}): Given {
  const { lifterId, lift, setup } = smallClub().best[0]!;
  return { lifterId, lift, setup, doneOn: '2026-11-20', reps: 2, made: 2, ...fields };
}
