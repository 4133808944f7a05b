import type { Reference } from '#contract/day/dayPlan.ts';
import { raisedAim } from '#contract/day/raisedAim.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import type { Restriction } from '#contract/records/lifters.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { LifterTask } from '#core/day/misfit.ts';
import { type Tiring, tiringOf } from '#core/effort/Tiring.ts';
import { centralDraw } from '#core/strength/drawCapability.ts';
import { drawTiring } from '#core/strength/drawTiring.ts';
import { bandCurvesOf } from '#reckon/gear/bandCurvesOf.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { type AssembledCapability, assembleCapability } from '#reckon/lifter/assembleCapability.ts';
import { assembleHeights, type LifterHeights } from '#reckon/lifter/assembleHeights.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import { drawsIn, estimatedCapability } from '#reckon/strength/estimatedCapability.ts';
import { aimOf } from './aimOf.ts';
import { emptyBarOf, pairsInUse } from './assembleRackGear.ts';
import { referenceMaximum } from './referenceMaximum.ts';
import { mostLoadOf, restrictionsOn, tooDeep } from './restricted.ts';
import { type SureStrength, sureAim, sureReference, sureStrengthOf } from './sureStrength.ts';
import { tooWeakForBar } from './tooWeakForBar.ts';

/** One lifter of a group, ready to be prescribed for. */
export interface AssembledPlace {
  start: Start;
  task: LifterTask;
  heights: LifterHeights;
  strength: AssembledCapability;
  reference: Reference;
  /** What of the strength is sure enough to go by. */
  sure: SureStrength;
  tiring: Tiring;
  /** What the lifter is held to that day. */
  restrictions: Restriction[];
}

export function assemblePlace(
  records: ClubRecords,
  on: string,
  group: Group,
  place: Place,
  estimates: readonly StrengthEstimate[],
): AssembledPlace {
  checkByHand(records, on, group, place);
  checkCurves(records, on, group, place);
  const start = startOf(group, place);
  const { lifterId, rackId, byCoach } = place;
  const setup = { rackId, start, barKg: 0, bands: byCoach?.bands ?? [], chains: [] };
  const { load, heights } = assembleLoad(records, { lifterId, lift: group.lift, setup, on });
  const restrictions = restrictionsOn(records, lifterId, group.lift, on);
  const deep = tooDeep(restrictions, start, heights.bottomM, (boxM) =>
    bottomOnBox(records, on, group, place, boxM),
  );
  if (deep !== null) throw new CannotAssemble(deep);
  const rack = recordById(records, 'rack', rackId);
  const { benchHeightM } = rack;
  const estimate = estimates.find((one) => one.lifterId === lifterId && one.lift === group.lift);
  const strength = estimate
    ? estimatedCapability(records, estimate, start, benchHeightM)
    : assembleCapability(records, lifterId, group.lift, start, on, benchHeightM);
  const sure = sureStrengthOf(records, group, strength);
  const { equipment } = recordById(records, 'lifter', lifterId);
  const known = referenceMaximum(records, lifterId, group.lift, on);
  const reference = sureReference(known, strength, equipment, sure);
  const tiring = estimate ? drawTiring(centralDraw(drawsIn(estimate)), group.lift) : tiringOf(group.lift);
  const { bottomM, lockoutM, gravityMps2, path } = load;
  const most = mostLoadOf(restrictions, reference.kg, group);
  const task = {
    capability: strength.capability,
    travel: { bottomM, lockoutM, gravityMps2, path },
    heightSpread: heights,
    aim: aimOf({ ...group, aim: sureAim(raisedAim(group.aim, place.moreShare), sure) }, tiring),
    referenceKg: reference.kg,
    speedCorrection: strength.speedCorrection,
    ...(most === undefined ? {} : { most }),
  };
  const goesBy = estimate ? 'log' : strength.best === null ? 'bodyMass' : 'best';
  const { barKg, collarsKg } = emptyBarOf(records, rack);
  const emptyKg = barKg + collarsKg;
  if (most !== undefined && emptyKg > Math.min(most.barKg, most.lockoutKg))
    throw new CannotAssemble(
      `Restricted to ${Math.round(Math.min(most.barKg, most.lockoutKg))} kg, and the empty bar with its collars is ${emptyKg} kg: take a lighter bar.`,
    );
  const tooWeak = tooWeakForBar(task, emptyKg, strength.bodyMassKg, goesBy);
  if (tooWeak !== null) throw new CannotAssemble(tooWeak);
  return {
    start,
    task,
    heights,
    strength,
    reference,
    sure,
    tiring,
    restrictions,
  };
}

/** Where the bar would be for this lifter at the bottom, on a box of a height. */
function bottomOnBox(
  records: ClubRecords,
  on: string,
  { lift }: Group,
  { lifterId }: Place,
  boxM: number,
): number {
  return assembleHeights(records, lifterId, lift, { way: 'box', heightM: boxM }, on).bottomM;
}

/** Gear set by hand must still be there: a pair in use, a hookup of this rack for this lift. */
function checkByHand(records: ClubRecords, on: string, { lift }: Group, { rackId, byCoach }: Place): void {
  for (const { bandPairId, hookupId } of byCoach?.bands ?? []) {
    const { label, retiredOn } = recordById(records, 'bandPair', bandPairId);
    const hookup = recordById(records, 'hookup', hookupId);
    if (retiredOn !== null && retiredOn <= on) {
      throw new CannotAssemble(
        `Band pair ${label} is set by hand but retired since ${retiredOn}: choose another.`,
      );
    }
    if (hookup.rackId !== rackId || !hookup.lifts.includes(lift)) {
      throw new CannotAssemble(
        `Hookup "${hookup.label}" is set by hand but not in use at this rack for the ${lift}: choose another.`,
      );
    }
  }
  for (const { chainPairId } of byCoach?.chains ?? []) recordById(records, 'chainPair', chainPairId);
}

/** Every pair that the rack may be given has its curves; a wrong one is said to each lifter there instead of ending the day. */
function checkCurves(records: ClubRecords, on: string, { lift }: Group, { rackId }: Place): void {
  const hangs = records.hookup.some((hookup) => hookup.rackId === rackId && hookup.lifts.includes(lift));
  if (hangs) for (const { id } of pairsInUse(records, on)) bandCurvesOf(records, id, on);
}
