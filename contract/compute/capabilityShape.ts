import { z } from 'zod';
import type { PopulationShape } from '#core/lifter/populationShape.ts';
import type { Load } from '#core/load/Load.ts';
import type { Capability } from '#core/rep/Capability.ts';
import {
  exponent,
  fields,
  finite,
  force,
  length,
  lengthOrNone,
  massOrNone,
  notNegative,
  pace,
  paceOrNone,
  positive,
} from './fields.ts';

export const range = fields({ from_m: lengthOrNone, to_m: length }).superRefine(
  ({ from_m, to_m }, context) => {
    if (to_m > from_m) return;
    context.addIssue({ code: 'custom', path: ['to_m'], message: `it must be above from_m (${from_m})` });
  },
);

const capabilityFields = {
  strength_N: force.describe('Force that can just be held at s = 0'),
  slope: exponent,
  curvature: exponent,
  dip: fields({ depth: exponent, at: exponent, width: positive.max(100) })
    .optional()
    .describe('The sticking region; none: depth 0'),
  maxSpeed_mps: pace,
  rebound: notNegative.max(10),
  reboundTime_s: pace,
  strainAfter_s: paceOrNone,
  strainTime_s: pace,
  buildUpTime_s: paceOrNone
    .default(0)
    .describe('Time constant with which the push builds up from what just holds the bar; 0: at once'),
  builtShare: z
    .number()
    .min(0)
    .max(1)
    .default(0)
    .describe('Share of the build-up that the stretch has done at the bottom'),
  easing: notNegative
    .max(100)
    .default(0)
    .describe('How the push eases off, so that the bar comes to lockout near rest; 0: not at all'),
  movedBody_kg: massOrNone.describe('Share of the body that rises with the bar'),
  range: range.optional().describe("The lifter's full range; without it the load's bottom and lockout"),
};

export const capability = fields(capabilityFields);

/** The same where the strength is what is looked for: a `strength_N` that is given is ignored. */
export const capabilityWithoutStrength = fields({ ...capabilityFields, strength_N: finite.optional() });

export function toCapability(
  document: z.output<typeof capability>,
  travel: Pick<Load, 'bottomM' | 'lockoutM'>,
): Capability {
  const { range } = document;
  return {
    strengthN: document.strength_N,
    slope: document.slope,
    curvature: document.curvature,
    dip: document.dip ?? { depth: 0, at: 0.5, width: 1 },
    maxSpeedMps: document.maxSpeed_mps,
    rebound: document.rebound,
    reboundTimeS: document.reboundTime_s,
    strainAfterS: document.strainAfter_s,
    strainTimeS: document.strainTime_s,
    buildUpTimeS: document.buildUpTime_s,
    builtShare: document.builtShare,
    easing: document.easing,
    movedBodyKg: document.movedBody_kg,
    range: range ? { fromM: range.from_m, toM: range.to_m } : { fromM: travel.bottomM, toM: travel.lockoutM },
  };
}

/** A population's shape as a document, with what of a body of this mass moves and without a strength. */
export function fromShape(
  shape: PopulationShape,
  bodyMassKg: number,
): Omit<z.input<typeof capabilityWithoutStrength>, 'strength_N' | 'range'> {
  return {
    slope: shape.slope,
    curvature: shape.curvature,
    dip: shape.dip,
    maxSpeed_mps: shape.maxSpeedMps,
    rebound: shape.rebound,
    reboundTime_s: shape.reboundTimeS,
    strainAfter_s: shape.strainAfterS,
    strainTime_s: shape.strainTimeS,
    buildUpTime_s: shape.buildUpTimeS,
    builtShare: shape.builtShare,
    easing: shape.easing,
    movedBody_kg: shape.movedBodyShare * bodyMassKg,
  };
}
