import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Start } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { sdOfBelief } from '#core/strength/belief.ts';
import type { Draw } from '#core/strength/Draw.ts';
import { centralDraw, drawCapability } from '#core/strength/drawCapability.ts';
import { speedCorrectionOf } from '#core/strength/speedCorrectionOf.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import type { AssembledCapability } from '#reckon/lifter/assembleCapability.ts';
import { assembleHeights } from '#reckon/lifter/assembleHeights.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';

/** What a lifter can push from a start by all that was logged: the middle of the estimate, with its spread. */
export function estimatedCapability(
  records: ClubRecords,
  estimate: StrengthEstimate,
  start: Start,
  benchPadM: number | null,
): AssembledCapability {
  const { lifterId, lift, on, bodyMassKg, bodyMassKnown, maxKg } = estimate;
  const { range } = assembleHeights(records, lifterId, lift, start, on, benchPadM);
  const movedBodyKg = populationShape(lift).movedBodyShare * bodyMassKg;
  const { equipment } = recordById(records, 'lifter', lifterId);
  const central = centralDraw(drawsIn(estimate));
  return {
    capability: drawCapability(
      central,
      lift,
      riggingOf(records, lifterId, lift, competitionSetup(lift), on),
      { start: start.way, range, movedBodyKg, equipment },
    ),
    speedCorrection: speedCorrectionOf(central),
    strengthSdLn: sdOfBelief({
      low80: Math.log(maxKg.low80 + movedBodyKg),
      high80: Math.log(maxKg.high80 + movedBodyKg),
    }),
    known: 'estimated',
    best: null,
    bodyMassKg,
    bodyMassKnown,
    estimate,
  };
}

/** The answers of an estimate as the core asks them. */
export function drawsIn({ draws }: Pick<StrengthEstimate, 'draws'>): Draw[] {
  return draws as unknown as Draw[];
}
