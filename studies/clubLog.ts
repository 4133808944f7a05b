import type { Lift } from '#core/lifter/populationShape.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import { longLog } from './longLog.ts';
import type { SimulatedLifter } from './simulateLifter.ts';

/** So many different logs are simulated; lifters who share one differ in height and strength. */
const LOGS = 4;

/** The log of one lifter of a club: every lifter lifts through heights of their own, so that few tables are shared. */
export function clubLog(lifter: number, lift: Lift, sets: number): SimulatedLifter {
  const log = longLog(1 + (lifter % LOGS), lift, sets);
  const taller = 0.9 + 0.005 * lifter;
  const stronger = 0.8 + 0.01 * lifter;
  const own = new Map<Rigging, Rigging>();
  const ownOf = (rigging: Rigging) => {
    const found = own.get(rigging) ?? scaled(rigging, taller, stronger);
    own.set(rigging, found);
    return found;
  };
  return {
    ...log,
    reference: ownOf(log.reference),
    bodyMassKg: stronger * log.bodyMassKg,
    sets: log.sets.map((set) => ({
      ...set,
      rigging: ownOf(set.rigging),
      barKg: stronger * set.barKg,
      movedBodyKg: stronger * set.movedBodyKg,
    })),
  };
}

function scaled({ start, load, range }: Rigging, taller: number, stronger: number): Rigging {
  return {
    start,
    range: { fromM: taller * range.fromM, toM: taller * range.toM },
    load: {
      ...load,
      bottomM: taller * load.bottomM,
      lockoutM: taller * load.lockoutM,
      hungBands: load.hungBands.map((band) =>
        'verticalAt' in band
          ? {
              ...band,
              verticalAt: band.verticalAt.map(({ zM, forceN }) => ({
                zM: taller * zM,
                forceN: stronger * forceN,
              })),
            }
          : band,
      ),
    },
  };
}
