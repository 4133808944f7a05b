import type { RackGear } from './Gear.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';
import type { SetupRanking } from './SetupRanking.ts';

/** A lifter in the allocation; the list of lifters is in lifting order. */
export interface AllocationLifter {
  /** Index into `AllocationInput.racks`. */
  rack: number;
  ranking: SetupRanking;
  /** How much this lifter's misfit counts; 1 for all alike. */
  weight: number;
  /** The coach chose the set: it stays, whatever the others take. */
  setFixed: boolean;
}

export interface AllocationInput {
  /** Pairs and chains are told apart by their ids, across racks. */
  racks: readonly RackGear[];
  lifters: readonly AllocationLifter[];
  bandChangeMinutes: number;
  /** 0: each their own. 1: one band set for the whole rack. */
  oneSetPull: number;
  /** Asked now and then: true ends the search with the best so far and its gap. */
  outOfTime: () => boolean;
}

export interface Allocation {
  /** One a lifter, in the order of the input. */
  chosen: PrescribedSetup[];
  /** Weighted sum of the misfits. */
  misfit: number;
  racks: { changes: number; handlingMinutes: number }[];
  /** `misfit + weight * handling minutes + 0.0001 a hung pair`: what was made least. */
  total: number;
  proof: {
    /** `optimal`: no other is better by more than a tie (0.0005); `gap` says by how much one could be, 0 mostly. */
    status: 'optimal' | 'timeLimit';
    /** No allocation of any sets costs less. */
    bound: number;
    gap: number;
    /** Of stocks too large to score every set: how many were not, all lifters together; the bound holds for them too. */
    setsLeftOut: number;
  };
  /** What the coach's own choices hang at more racks at once than there is of it. */
  clashes: { id: string; sort: 'bandPair' | 'chainPair' }[];
}
