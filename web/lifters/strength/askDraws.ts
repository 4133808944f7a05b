import type { Equipment } from '#contract/records/lift.ts';
import type { Belief, StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { repsPossible } from '#core/effort/repsPossible.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { heldForceN } from '#core/rep/strengthCurve.ts';
import { maxBarsOf } from '#core/strength/askDraws.ts';
import { beliefOf } from '#core/strength/belief.ts';
import type { Draw } from '#core/strength/Draw.ts';
import { drawCapability } from '#core/strength/drawCapability.ts';
import { drawTiring } from '#core/strength/drawTiring.ts';
import { liftModelOf } from '#core/strength/estimateStrength.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { LiftModel } from '#core/strength/readGroup.ts';
import { drawsIn } from '#reckon/strength/estimatedCapability.ts';

/** A lifter as the estimate knows them, ready to be asked. */
export interface AskedLifter {
  model: LiftModel;
  lift: StrengthEstimate['lift'];
  bodyMassKg: number;
  /** The straight competition lift, in which strength is counted. */
  straight: Rigging;
  /** The draws with what each can push there. */
  answers: readonly { draw: Draw; capability: Capability }[];
}

/** Makes an estimate ready to be asked. */
export function askedLifter(
  { lift, draws, bodyMassKg }: Pick<StrengthEstimate, 'lift' | 'draws' | 'bodyMassKg'>,
  straight: Rigging,
): AskedLifter {
  const movedBodyKg = populationShape(lift).movedBodyShare * bodyMassKg;
  return {
    model: liftModelOf(lift, straight),
    lift,
    bodyMassKg,
    straight,
    answers: drawsIn({ draws }).map((draw) => ({
      draw,
      capability: drawCapability(draw, lift, straight, { ...straight, movedBodyKg, equipment: 'raw' }),
    })),
  };
}

/** The heaviest bar with a setup; null where bands and chains alone may be too much, or no strength makes the rep. */
export function maxBarOf(lifter: AskedLifter, rigging: Rigging, equipment: Equipment): Belief | null {
  const movedBodyKg = populationShape(lifter.lift).movedBodyShare * lifter.bodyMassKg;
  const asked = { rigging, movedBodyKg, equipment, platform: false };
  const draws = lifter.answers.map(({ draw }) => draw);
  try {
    const found = beliefOf(maxBarsOf(lifter.model, asked, draws));
    return found.low80 > 0 ? found : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Force at the bar (N) that can be held still, at a row of heights over the lifter's full range. */
export function heldCurveOf(
  { answers, straight }: AskedLifter,
  points: number,
): { zM: number; held: Belief }[] {
  const { fromM, toM } = straight.range;
  return Array.from({ length: points }, (_, i) => {
    const zM = fromM + ((toM - fromM) * i) / (points - 1);
    const heldN = answers.map(({ capability }) => {
      const bodyN = capability.movedBodyKg * straight.load.gravityMps2;
      return heldForceN(capability, zM) - bodyN;
    });
    return { zM, held: beliefOf(heldN) };
  });
}

/** Reps that the rested lifter makes in one set at each share of the straight maximum. */
export function repsOf({ lift, answers, straight }: AskedLifter, shares: readonly number[]): Belief[] {
  const maxima = answers.flatMap(({ draw, capability }) => {
    const max = maxBar({ ...straight.load, barKg: 0 }, capability);
    return max === null ? [] : [{ draw, capability, barKg: max.barKg }];
  });
  return shares.map((share) =>
    beliefOf(
      maxima.map(({ draw, capability, barKg }) =>
        repsPossible({ ...straight.load, barKg: share * barKg }, capability, drawTiring(draw, lift)),
      ),
    ),
  );
}
