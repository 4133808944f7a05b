import type { Equipment } from '#contract/records/lift.ts';
import type { Belief, StrengthEstimate } from '#contract/strengthEstimate.ts';
import { repsPossible } from '#core/effort/repsPossible.ts';
import { tiringOf } from '#core/effort/Tiring.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import type { Start } from '#core/lifter/startHeights.ts';
import type { Load } from '#core/load/Load.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { fitStrength } from '#core/rep/fitStrength.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { heldForceN } from '#core/rep/strengthCurve.ts';
import { maxBarsOf } from '#core/strength/askDraws.ts';
import { beliefOf } from '#core/strength/belief.ts';
import type { Draw } from '#core/strength/Draw.ts';
import { liftModelOf } from '#core/strength/estimateStrength.ts';
import type { LiftModel } from '#core/strength/readGroup.ts';
import { reboundOf } from '#core/strength/setModel.ts';

/** A place to lift: the load without regard to its bar, how it begins, the lifter's full range. */
export interface Place {
  load: Load;
  start: Start['way'];
  range: Capability['range'];
}

/** A lifter as the estimate knows them, ready to be asked. */
export interface AskedLifter {
  model: LiftModel;
  lift: StrengthEstimate['lift'];
  bodyMassKg: number;
  /** The straight competition lift, in which strength is counted. */
  straight: Place;
  /** The draws with what each can push there. */
  answers: readonly { draw: Draw; capability: Capability }[];
}

/** Makes an estimate ready to be asked. */
export function askedLifter(
  { lift, draws, bodyMassKg }: Pick<StrengthEstimate, 'lift' | 'draws' | 'bodyMassKg'>,
  straight: Place,
): AskedLifter {
  return {
    model: liftModelOf(lift, straight),
    lift,
    bodyMassKg,
    straight,
    answers: draws.map(drawOf).map((draw) => ({
      draw,
      capability: capabilityOf(lift, bodyMassKg, draw, straight),
    })),
  };
}

/** The heaviest bar with a setup; null where bands and chains alone may be too much, or no strength makes the rep. */
export function maxBarOf(lifter: AskedLifter, place: Place, equipment: Equipment): Belief | null {
  const movedBodyKg = populationShape(lifter.lift).movedBodyShare * lifter.bodyMassKg;
  const asked = { rigging: place, movedBodyKg, equipment, platform: false };
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
  const tiring = tiringOf(lift);
  const maxima = answers.flatMap(({ draw, capability }) => {
    const max = maxBar(straight.load, capability);
    return max === null ? [] : [{ draw, capability, barKg: max.barKg }];
  });
  return shares.map((share) =>
    beliefOf(
      maxima.map(({ draw, capability, barKg }) => {
        const perSecond = tiring.perSecond * Math.exp(draw.lnTiring);
        return repsPossible({ ...straight.load, barKg: share * barKg }, capability, { ...tiring, perSecond });
      }),
    ),
  );
}

/** What a draw can push from the straight start: its shape, and the strength that just makes its straight maximum. */
function capabilityOf(
  lift: AskedLifter['lift'],
  bodyMassKg: number,
  draw: Draw,
  straight: Place,
): Capability {
  const { movedBodyShare, ...usual } = populationShape(lift);
  const movedBodyKg = movedBodyShare * bodyMassKg;
  const capability = {
    ...usual,
    strengthN: 1,
    movedBodyKg,
    range: straight.range,
    slope: usual.slope + draw.slope,
    maxSpeedMps: usual.maxSpeedMps * Math.exp(draw.lnMaxSpeed),
    rebound: reboundOf(draw, populationShape(lift), straight.start),
  };
  const barKg = Math.max(LIGHTEST_KG, Math.exp(draw.lnTotal) - movedBodyKg);
  return { ...capability, strengthN: fitStrength({ ...straight.load, barKg }, capability) };
}

/** A bar without mass would have no motion of its own. */
const LIGHTEST_KG = 0.5;

/** A draw travels as a plain record; its names are those of the core. */
function drawOf(travelled: StrengthEstimate['draws'][number]): Draw {
  return travelled as unknown as Draw;
}
