import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import type { Capability } from '../rep/Capability.ts';
import { RESTED } from './fatigue.ts';
import { repTable } from './repTable.ts';
import type { Tiring } from './Tiring.ts';
import { walkSet } from './walkSession.ts';

/** Nobody counts further: a bar that light is no matter of strength. */
export const MOST_REPS = 100;

/** How many reps a rested lifter makes without rest between them, up to 100. */
export function repsPossible(load: Load, capability: Capability, tiring: Tiring): number {
  const table = repTable(compileLoad(load), capability, tiring.loweringS);
  if (table === null) return 0;
  return walkSet(table, MOST_REPS, tiring, RESTED).filter(({ surplusLn }) => surplusLn >= 0).length;
}
