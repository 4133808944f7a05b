import type { Lift } from './populationShape.ts';
import type { HeightRange } from './startHeights.ts';

/** Heights worked out from stature, with their standard deviations (m); always to be labelled as estimated. */
export interface EstimatedHeights extends HeightRange {
  bottomSdM: number;
  lockoutSdM: number;
  known: 'estimated';
}

/**
 * Landmarks as shares of stature: Drillis & Contini 1966, as drawn in Winter, Biomechanics and Motor Control of Human
 * Movement (from memory, high confidence).
 */
const SHOULDER = 0.818;
const HIP = 0.53;
const KNEE = 0.285;
const WRIST = 0.485;
const FINGERTIP = 0.377;
const ARM_TO_WRIST = 0.332;
const SHOULDER_WIDTH = 0.259;

/** A squat bar lies a little below the shoulder joint's height (assumption, share of stature). */
const BAR_BELOW_SHOULDER = 0.01;
/** Trunk lean from upright: standing with the bar, and at parallel (assumptions, degrees). */
const LEAN_TOP_DEG = 10;
const LEAN_BOTTOM_DEG = 45;
/** Bench pad (a rule book allows 42 to 45 cm), chest depth, shoulder joint above the pad (assumptions, m and share). */
const BENCH_PAD_M = 0.43;
const CHEST_SHARE = 0.145;
const SHOULDER_ABOVE_PAD_M = 0.1;
/** Hands on the outer marks, 81 cm apart in the rule book. */
const GRIP_M = 0.81;
/** Radius of a full-size disc of 450 mm. */
const DISC_RADIUS_M = 0.225;
/** Standard deviations as shares of stature: people of one stature differ (assumption). */
const LOCKOUT_SD = 0.015;
const BOTTOM_SD = 0.025;
/** Parallel box: knees out, and flesh between hip joint and box (assumptions). */
const STANCE_SHARE = 0.94;
const SEAT_M = 0.1;

/**
 * Bottom and lockout of the full range (bar centre above the floor) from stature (m, 1 to 2.5) by published segment
 * ratios. `benchPadM` where the rack's bench is measured.
 */
export function estimateHeights(
  lift: Lift,
  statureM: number,
  benchPadM: number = BENCH_PAD_M,
): EstimatedHeights {
  const spread = {
    bottomSdM: BOTTOM_SD * statureM,
    lockoutSdM: LOCKOUT_SD * statureM,
    known: 'estimated' as const,
  };
  if (lift === 'squat') {
    const trunkM = (SHOULDER - HIP) * statureM;
    const lockoutM = (SHOULDER - BAR_BELOW_SHOULDER) * statureM - trunkM * (1 - cosDeg(LEAN_TOP_DEG));
    const dropM = (HIP - KNEE) * statureM + trunkM * (cosDeg(LEAN_TOP_DEG) - cosDeg(LEAN_BOTTOM_DEG));
    return { bottomM: lockoutM - dropM, lockoutM, ...spread };
  }
  if (lift === 'bench') {
    const sidewaysM = Math.max(0, (GRIP_M - SHOULDER_WIDTH * statureM) / 2);
    const armM = Math.sqrt((ARM_TO_WRIST * statureM) ** 2 - sidewaysM ** 2);
    return {
      bottomM: benchPadM + CHEST_SHARE * statureM,
      lockoutM: benchPadM + SHOULDER_ABOVE_PAD_M + armM,
      ...spread,
    };
  }
  // The bar hangs in the middle of the hand, standing straight.
  return { bottomM: DISC_RADIUS_M, lockoutM: ((WRIST + FINGERTIP) / 2) * statureM, ...spread, bottomSdM: 0 };
}

/** Height of a box that stops the lifter at parallel (m), from stature: estimated, with its standard deviation. */
export function estimateParallelBox(statureM: number): { heightM: number; sdM: number } {
  return { heightM: KNEE * STANCE_SHARE * statureM - SEAT_M, sdM: BOTTOM_SD * statureM };
}

function cosDeg(degrees: number): number {
  return Math.cos((degrees * Math.PI) / 180);
}
