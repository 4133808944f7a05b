import type { Load } from '../load/Load.ts';
import type { Capability } from '../rep/Capability.ts';
import { fitStrength } from '../rep/fitStrength.ts';
import { type Lift, type PopulationShape, populationShape } from './populationShape.ts';
import type { Start } from './startHeights.ts';

/**
 * Share of the free start's rebound that is left. Paused: about one second on the chest, half-life 0.85 s (Wilson,
 * Elliott & Wood 1991, Med Sci Sports Exerc 23:364). Box: assumption; lifters differ widely. Pins and blocks: none.
 */
const REBOUND_SHARE: Record<Start['way'], number> = {
  free: 1,
  paused: 0.44,
  boards: 0.44,
  box: 0.1,
  pins: 0,
  blocks: 0,
  deficit: 0,
};

/** Share of the free start's rebound, and of the push it has built up, that is left from a start, for lifters whose own nobody knows. */
export function reboundShare(start: Start['way']): number {
  return REBOUND_SHARE[start];
}

/** Standard deviation of ln strength behind one best: a maximum repeats to 2-4 % (Grgic et al. 2020), and it ages. */
const BEST_SD_LN = 0.03;
const SD_LN_PER_YEAR = 0.04;

/** A maximum with all that was on the bar, and how it began. */
export interface BestLift {
  load: Load;
  start: Start['way'];
  /** The lifter's full range in the frame of `load`. */
  range: Capability['range'];
  bodyMassKg: number;
  yearsAgo: number;
}

/** A capability with the spread of its strength. */
export interface LifterCapability {
  capability: Capability;
  /** Standard deviation of ln strength; shape errors are not in it. */
  strengthSdLn: number;
}

/**
 * What a lifter can push from a start today: the population's shape for the lift, moved body mass, and the strength for
 * which `best` is just a maximum through the very setup in which it was made.
 */
export function lifterCapability(
  lift: Lift,
  today: { start: Start['way']; range: Capability['range']; bodyMassKg: number },
  best: BestLift,
): LifterCapability {
  const then = { ...shapeFor(lift, best.start, best.bodyMassKg), strengthN: 1, range: best.range };
  return {
    capability: {
      ...shapeFor(lift, today.start, today.bodyMassKg),
      strengthN: fitStrength(best.load, then),
      range: today.range,
    },
    strengthSdLn: Math.hypot(BEST_SD_LN, SD_LN_PER_YEAR * Math.max(0, best.yearsAgo)),
  };
}

function shapeFor(
  lift: Lift,
  start: Start['way'],
  bodyMassKg: number,
): Omit<Capability, 'strengthN' | 'range'> {
  const { movedBodyShare, ...shape } = shapeFrom(populationShape(lift), start);
  return { ...shape, movedBodyKg: movedBodyShare * bodyMassKg };
}

/** A shape that is told for a free start, from another one: what is left of the stretch there. */
export function shapeFrom(shape: PopulationShape, start: Start['way']): PopulationShape {
  const share = REBOUND_SHARE[start];
  return { ...shape, rebound: shape.rebound * share, builtShare: shape.builtShare * share };
}
