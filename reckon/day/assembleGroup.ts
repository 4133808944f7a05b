import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { type AssembledPlace, assemblePlace } from './assemblePlace.ts';
import { type AssembledRack, assembleRackGear } from './assembleRackGear.ts';

/** A lifter of a group ready to be prescribed for, or why none can be. */
export type Found = { place: Place; assembled: AssembledPlace } | { place: Place; problem: string };

/** All places of a group in its order, and the racks that it uses at once. */
export function assembleGroup(
  records: ClubRecords,
  on: string,
  group: Group,
  estimates: readonly StrengthEstimate[],
): { found: Found[]; racks: AssembledRack[] } {
  const found = group.places.map(
    (place): Found => orProblem(place, () => assemblePlace(records, on, group, place, estimates)),
  );
  const ready = found.flatMap((one) => ('assembled' in one ? [one] : []));
  const racks = assembleRackGear(
    records,
    group.lift,
    on,
    [...new Set(ready.map(({ place }) => place.rackId))].map((rackId) => {
      const here = ready.filter(({ place }) => place.rackId === rackId);
      return {
        rackId,
        places: here.map(({ place }) => place),
        travels: here.map(({ assembled }) => assembled.task.travel),
      };
    }),
  );
  return { found, racks };
}

function orProblem(place: Place, assemble: () => AssembledPlace): Found {
  try {
    return { place, assembled: assemble() };
  } catch (error) {
    if (error instanceof CannotAssemble) return { place, problem: error.message };
    throw error;
  }
}
