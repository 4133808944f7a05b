import type { Capability } from '../rep/Capability.ts';

export type Lift = 'squat' | 'bench' | 'deadlift';

/** Everything of a capability but the lifter's own strength, body and range, with the rebound of a free start. */
export type PopulationShape = Omit<Capability, 'strengthN' | 'movedBodyKg' | 'range'> & {
  /** Share of body mass that rises with the bar. */
  movedBodyShare: number;
};

/**
 * Starting shapes, one a lift, for lifters whose own shape nobody has measured yet: assumptions, and shown as such.
 *
 * Squat: docs/model.md, found by trying. Moved body 0.88: de Leva 1996 (J Biomech 29:1223), body less shanks and feet,
 * 0.886 men, 0.878 women, an upper bound. Its speeds at 50 to 90 % of the maximum are below those of a guided-bar full
 * squat (Sanchez-Medina et al. 2017) and its speed at 98 % is that of powerlifters (Helms et al. 2017: 0.23 (0.05)).
 *
 * Bench: top speed, dip and rebound chosen so that a paused rep runs at the speeds of Gonzalez-Badillo &
 * Sanchez-Medina 2010 (Int J Sports Med 31:347) from 30 to 100 %; sticking region after van den Tillaar & Ettema 2009;
 * no moved body.
 *
 * Deadlift: from the floor without rebound; rises with height in the order of Beckham et al. 2012 (J Trainology 1:32);
 * speed at 99 % after Helms et al. 2017: 0.14 (0.05). Moved body 0.4: assumption, about trunk, head and arms turning
 * about the hip.
 */
const SHAPES: Record<Lift, PopulationShape> = {
  squat: {
    slope: 1.2,
    curvature: -0.5,
    dip: { depth: 0.2, at: 0.4, width: 0.2 },
    maxSpeedMps: 1.6,
    rebound: 0.35,
    reboundTimeS: 0.7,
    strainAfterS: 2.5,
    strainTimeS: 6,
    movedBodyShare: 0.88,
  },
  bench: {
    slope: 0.8,
    curvature: -0.3,
    dip: { depth: 0.22, at: 0.4, width: 0.2 },
    maxSpeedMps: 2.2,
    rebound: 0.25,
    reboundTimeS: 0.7,
    strainAfterS: 3,
    strainTimeS: 6,
    movedBodyShare: 0,
  },
  deadlift: {
    slope: 0.7,
    curvature: -0.1,
    dip: { depth: 0.12, at: 0.45, width: 0.25 },
    maxSpeedMps: 1.6,
    rebound: 0,
    reboundTimeS: 0.7,
    strainAfterS: 3,
    strainTimeS: 6,
    movedBodyShare: 0.4,
  },
};

export function populationShape(lift: Lift): PopulationShape {
  return SHAPES[lift];
}
