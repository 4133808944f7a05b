import type { PlanBlock } from '#contract/dayPlan.ts';
import { competitionSetup, riggingOf } from '#contract/estimate/riggingOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { gearLoad } from '#core/day/gearLoad.ts';
import { chanceToSpare } from '#core/strength/askDraws.ts';
import { beliefOf } from '#core/strength/belief.ts';
import { chanceOfWork } from '#core/strength/chanceOfWork.ts';
import { centralDraw } from '#core/strength/drawCapability.ts';
import { liftModelOf } from '#core/strength/estimateStrength.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import type { AssembledRack } from './assembleRackGear.ts';
import { drawsIn } from './estimatedCapability.ts';
import { recordById } from './recordById.ts';

type Expected = NonNullable<PlanBlock['expected']>;

/**
 * What is to be expected of a bar in this set, and a margin of strength, as rested and with a shorter rest where one is
 * looked at: by the lifter's whole log, and without an estimate by how well the strength is known, with the scatter from
 * day to day of most lifters.
 */
export function expectedOf(
  records: ClubRecords,
  { lift, start: groupStart }: Group,
  { lifterId, start }: Place,
  { task, strength }: AssembledPlace,
  { gear }: AssembledRack,
  set: GearSet,
): (barKg: number, marginLn: number, shorterRestLn: number | null) => Expected {
  const { estimate, capability, known, strengthSdLn } = strength;
  if (estimate === null) {
    const average = { ...populationPrior(lift).mean, lnTotal: 0 };
    const chance = (spareLn: number) => chanceToSpare(spareLn, average, strengthSdLn);
    return (_, marginLn, shorterRestLn) => ({
      chanceAllReps: chance(marginLn),
      chanceShorterRest: shorterRestLn === null ? null : chance(shorterRestLn),
      firstMps: null,
      goesBy: known === 'assumed' ? 'bodyMass' : 'best',
    });
  }
  const draws = drawsIn(estimate);
  const central = centralDraw(draws);
  const liftModel = liftModelOf(
    lift,
    riggingOf(records, lifterId, lift, competitionSetup(lift), estimate.on),
  );
  const asked = {
    rigging: {
      load: gearLoad(gear, set, task.travel, 0),
      start: (start ?? groupStart).way,
      range: capability.range,
    },
    movedBodyKg: capability.movedBodyKg,
    equipment: recordById(records, 'lifter', lifterId).equipment,
    platform: false,
  };
  return (barKg, marginLn, shorterRestLn) => {
    const marginsLn = shorterRestLn === null ? [marginLn] : [marginLn, shorterRestLn];
    const { chancesAllReps, firstMps } = chanceOfWork(liftModel, asked, { barKg, marginsLn }, central, draws);
    const [chanceAllReps, chanceShorterRest = null] = chancesAllReps;
    return { chanceAllReps: chanceAllReps!, chanceShorterRest, firstMps: beliefOf(firstMps), goesBy: 'log' };
  };
}
