import type { Capability } from '../rep/Capability.ts';

export type Lift = 'squat' | 'bench' | 'deadlift';

/** Everything of a capability but the lifter's own strength, body and range, with the rebound and the built push of a free start. */
export type PopulationShape = Omit<Capability, 'strengthN' | 'movedBodyKg' | 'range'> & {
  /** Share of body mass that rises with the bar. */
  movedBodyShare: number;
};

/**
 * Starting shapes, one a lift, for lifters whose own shape nobody has measured yet: assumptions, and shown as such.
 * Fitted together to published load-velocity lines, the load from which a bench press is braked no more, and what the trade
 * says of boxes and pins; docs/model.md, "rep", has the sources and what still deviates.
 *
 * Moved body: squat 0.88 after de Leva 1996 (J Biomech 29:1223), body less shanks and feet, an upper bound; bench none;
 * deadlift 0.4, an assumption, about trunk, head and arms turning about the hip.
 */
const SHAPES: Record<Lift, PopulationShape> = {
  squat: {
    slope: 1.25,
    curvature: -0.4,
    dip: { depth: 0.2, at: 0.4, width: 0.2 },
    maxSpeedMps: 2.8,
    rebound: 0.55,
    reboundTimeS: 0.3,
    strainAfterS: 2.5,
    strainTimeS: 6,
    buildUpTimeS: 0.08,
    builtShare: 1,
    easing: 1.4,
    movedBodyShare: 0.88,
  },
  bench: {
    slope: 0.66,
    curvature: -0.46,
    dip: { depth: 0.14, at: 0.4, width: 0.2 },
    maxSpeedMps: 3.5,
    rebound: 0.26,
    reboundTimeS: 0.3,
    strainAfterS: 3,
    strainTimeS: 6,
    buildUpTimeS: 0.08,
    builtShare: 1,
    easing: 1.4,
    movedBodyShare: 0,
  },
  deadlift: {
    slope: 0.5,
    curvature: -0.1,
    dip: { depth: 0.135, at: 0.45, width: 0.25 },
    maxSpeedMps: 3,
    rebound: 0,
    reboundTimeS: 0.3,
    strainAfterS: 3,
    strainTimeS: 6,
    buildUpTimeS: 0.08,
    builtShare: 0,
    easing: 1.4,
    movedBodyShare: 0.4,
  },
};

export function populationShape(lift: Lift): PopulationShape {
  return SHAPES[lift];
}
