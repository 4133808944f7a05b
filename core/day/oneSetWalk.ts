import type { Walk } from './closedWalk.ts';
import { rotationChanges } from './handling.ts';
import type { SetLattice } from './setLattice.ts';

/** The cheapest rotation in which all free turns take the same set; those whose set the coach fixed keep theirs. */
export function oneSetWalk(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
  free: readonly number[],
): Walk | null {
  const fixedSets = costs.map((cost, turn) =>
    free.includes(turn) ? -1 : cost.findIndex((value) => value < Number.POSITIVE_INFINITY),
  );
  let best: Walk | null = null;
  for (let set = 0; set < lattice.sets.length; set++) {
    const sets = fixedSets.map((fixed) => (fixed >= 0 ? fixed : set));
    const own = sets.reduce((sum, one, turn) => sum + costs[turn]![one]!, 0);
    if (!(own < (best?.cost ?? Number.POSITIVE_INFINITY))) continue;
    const cost = own + changeCost * rotationChanges(sets.map((one) => lattice.sets[one]!));
    if (best === null || cost < best.cost) best = { cost, sets };
  }
  return best;
}
