import type { LnKg, LnRatio } from '../numeric/quantity.ts';
import type { StrengthPosterior } from './estimateStrength.ts';
import { middleParameters } from './middleParameters.ts';
import { standsForLn } from './observation.ts';
import { type ReadModel, readerOf } from './readGroup.ts';
import { atSurplus } from './readTable.ts';
import { FARTHEST_SURPLUS } from './response.ts';
import type { EffortGroup } from './sessions.ts';

/** Where a set acted: the straight raw total mass that it stands for, and whether as a bound or nearly as a value. */
export interface StraightTotal {
  lnTotal: LnKg;
  says: 'atLeast' | 'lessThan' | 'near';
}

/** For every set of a posterior, by its index, at the middle of the parameters; sets left out are missing. */
export function straightTotalsOf({ particles, sessions, lift }: StrengthPosterior): StraightTotal[] {
  const parameters = middleParameters(particles);
  const read = readerOf(parameters, lift);
  const result: StraightTotal[] = [];
  for (const { groups } of sessions) {
    for (const group of groups) {
      const reading = read(group.model);
      const bare = standsForLn(group, reading.straightLn, parameters);
      const acted = actsAt(group, reading);
      for (const set of group.members) result[set] = { lnTotal: bare + acted.surplus, says: acted.says };
    }
  }
  return result;
}

function actsAt(
  { made, missed, fastestMps, peakMps, reserve }: EffortGroup,
  { table }: ReadModel,
): { surplus: LnRatio; says: StraightTotal['says'] } {
  if (missed) return { surplus: table.neededFor(made + 1), says: 'lessThan' };
  if (fastestMps.count > 0) return { surplus: surplusAt(table.speedMps, fastestMps.mean), says: 'near' };
  if (peakMps.count > 0) return { surplus: surplusAt(table.peakMps(), peakMps.mean), says: 'near' };
  if (reserve.count >= 1) return { surplus: table.neededFor(made + reserve.mean + 0.5), says: 'near' };
  return { surplus: table.neededFor(Math.max(1, made)), says: 'atLeast' };
}

/** The surplus at which a table that rises reaches a speed. */
function surplusAt(values: Float64Array, wantedMps: number): number {
  let low = 0;
  let high = FARTHEST_SURPLUS;
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (atSurplus(values, middle) < wantedMps) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
