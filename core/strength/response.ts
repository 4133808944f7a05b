import { repEffortS } from '../effort/repEffort.ts';
import type { Tiring } from '../effort/Tiring.ts';
import { reboundShare } from '../lifter/lifterCapability.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import { type CompiledLoad, compileLoad, withBarKg } from '../load/compileLoad.ts';
import { findLimit } from '../numeric/findLimit.ts';
import { integrate } from '../numeric/gaussLegendre.ts';
import { ascend, COARSE } from '../rep/ascend.ts';
import type { Capability } from '../rep/Capability.ts';
import type { Rigging } from './Rigging.ts';

/**
 * How a lifter's strength shows in one rigging, tabulated so that no rep need be simulated again. By the model a rep
 * depends on strength S only through the surplus `u = ln(S / S_limit)`, where `S_limit` just makes the rep; and on
 * bar and moved body only through their sum, the total mass. Each quantity is a quadratic in each of three shape
 * parameters (`shapeSteps`), without cross terms.
 */
export interface Response {
  /** ln of total masses at which the table was made, ascending; one where nothing but mass is on the bar. */
  lnTotals: number[];
  tables: ResponseTable[];
}

/** Values at the population's shape and at each of three parameters a step below and above. */
export interface ResponseTable {
  /** ln(S_limit / (total mass x g)): 1 + 2 x 3 values. */
  lnLimit: Float64Array;
  /** Mean speed (m/s), peak speed (m/s) and effort (s) at the surpluses `SURPLUS_ROOTS` squared: speed for all seven shapes. */
  speedMps: Float64Array[];
  peakMps: Float64Array;
  effortS: Float64Array;
  /** Where a rep with the surplus -`SHORTFALLS` stops, on the lifter's full range. */
  stopS: Float64Array;
  /** Share of the mean load, moved body included, that bands carry. */
  bandShare: number;
}

/** Square roots of the surpluses tabulated: speed leaves its limit like a square root. */
export const ROOT_STEP = 0.1;
export const ROOTS = 14;
/** Surpluses below nought at which the place of a miss is tabulated. */
export const SHORTFALLS = [0.003, 0.03, 0.1, 0.25] as const;
/** Distance of the outer table values of ln top speed and slope. */
export const SHAPE_STEPS = [0.15, 0.25] as const;

/** Rebound of a start as a fraction of force, and the two values beside it at which tables are made. */
export function reboundNodes(shape: PopulationShape, start: Rigging['start']): [number, number, number] {
  const middle = shape.rebound * reboundShare(start);
  if (middle === 0) return [0, 0, 0];
  return start === 'free' ? [0.4 * middle, middle, 2 * middle] : [0, middle, 0.8 * shape.rebound];
}

/** Strength is looked for to this share: far within what a set can tell. */
const LIMIT_SHARE = 2e-4;
/** A table value a hair above the limit stands for the limit itself. */
const JUST_ABOVE = 1e-4;
/** Masses nearer than this need no second table. */
const SAME_MASS_LN = 0.005;
/** Total masses of neighbouring tables differ by no more than this in ln. */
const MASS_STEP_LN = 0.25;

/**
 * Tabulates one rigging for total masses from `lowKg` to `highKg`. Throws RangeError where no strength makes the rep.
 */
export function tabulateResponse(
  rigging: Rigging,
  shape: PopulationShape,
  tiring: Tiring,
  lowKg: number,
  highKg: number,
): Response {
  const compiled = compileLoad({ ...rigging.load, barKg: lowKg });
  const { load } = compiled;
  const straight = load.bands.length + load.hungBands.length + load.chains.length === 0;
  const span = Math.log(highKg / lowKg);
  const count = straight || span < SAME_MASS_LN ? 1 : Math.min(6, 2 + Math.floor(span / MASS_STEP_LN));
  const lnTotals = Array.from({ length: count }, (_, i) =>
    count === 1 ? Math.log(lowKg) : Math.log(lowKg) + (span * i) / (count - 1),
  );
  return { lnTotals, tables: lnTotals.map((ln) => tabulate(rigging, shape, tiring, compiled, Math.exp(ln))) };
}

function tabulate(
  rigging: Rigging,
  shape: PopulationShape,
  tiring: Tiring,
  anyBar: CompiledLoad,
  totalKg: number,
): ResponseTable {
  // Bar and body rise together, so that all of the mass may as well be on the bar.
  const compiled = withBarKg(anyBar, totalKg);
  const { gravityMps2 } = compiled.load;
  const [lowRebound, rebound, highRebound] = reboundNodes(shape, rigging.start);
  const middle: Capability = { ...shape, rebound, strengthN: 1, movedBodyKg: 0, range: rigging.range };
  const [speedStep, slopeStep] = SHAPE_STEPS;
  const shapes: Capability[] = [
    middle,
    { ...middle, maxSpeedMps: middle.maxSpeedMps * Math.exp(-speedStep) },
    { ...middle, maxSpeedMps: middle.maxSpeedMps * Math.exp(speedStep) },
    { ...middle, slope: middle.slope - slopeStep },
    { ...middle, slope: middle.slope + slopeStep },
    { ...middle, rebound: lowRebound },
    { ...middle, rebound: highRebound },
  ];
  const weightN = totalKg * gravityMps2;
  const heaviestN = Math.max(...[0, 0.5, 1].map((x) => compiled.at(at(compiled, x)).totalN));
  let guess = heaviestN;
  const limits: number[] = [];
  const speedMps: Float64Array[] = [];
  const peakMps = new Float64Array(ROOTS);
  const effortS = new Float64Array(ROOTS);
  shapes.forEach((capability, i) => {
    const same = i > 4 && rebound === 0;
    if (same) {
      limits.push(limits[0]!);
      speedMps.push(speedMps[0]!);
      return;
    }
    const limitN = limitStrength(compiled, capability, guess, i === 0 ? 0.2 : 0.03);
    if (i === 0) guess = limitN;
    limits.push(limitN);
    // Off the middle shape every other root is enough: the differences are smooth.
    const stride = i === 0 ? 1 : 3;
    const speeds = new Float64Array(ROOTS);
    for (let j = 0; j < ROOTS; j += 1) {
      if (j % stride !== 0 && j !== ROOTS - 1) continue;
      const surplus = Math.max(JUST_ABOVE, (j * ROOT_STEP) ** 2);
      const strong = { ...capability, strengthN: limitN * Math.exp(surplus) };
      const ascent = ascend(compiled, strong, COARSE);
      const end = ascent.states[ascent.states.length - 1]!;
      speeds[j] = ascent.made ? (compiled.load.lockoutM - compiled.load.bottomM) / end.t : 0;
      if (i > 0) continue;
      peakMps[j] = ascent.turns.reduce((v, turn) => Math.max(v, turn.state.v), end.v);
      effortS[j] = repEffortS(compiled, strong, ascent, tiring.loweringS);
    }
    if (stride > 1) fillBetween(speeds, speedMps[0]!, stride);
    speedMps.push(speeds);
  });
  const stopS = Float64Array.from(SHORTFALLS, (shortfall) => {
    const { states } = ascend(compiled, { ...middle, strengthN: limits[0]! * Math.exp(-shortfall) }, COARSE);
    const { fromM, toM } = rigging.range;
    return (states[states.length - 1]!.z - fromM) / (toM - fromM);
  });
  return {
    lnLimit: Float64Array.from(limits, (limitN) => Math.log(limitN / weightN)),
    speedMps,
    peakMps,
    effortS,
    stopS,
    bandShare: bandShareOf(compiled),
  };
}

/** Between the values that were simulated the ratio to the middle shape's runs straight. */
function fillBetween(speeds: Float64Array, middle: Float64Array, stride: number): void {
  const last = speeds.length - 1;
  for (let j = 0; j < last; j++) {
    if (j % stride === 0) continue;
    const low = j - (j % stride);
    const high = Math.min(low + stride, last);
    const x = (j - low) / (high - low);
    const ratio = (k: number) => (middle[k]! > 0 ? speeds[k]! / middle[k]! : 1);
    speeds[j] = middle[j]! * (ratio(low) * (1 - x) + ratio(high) * x);
  }
}

/** The least strength that makes the rep. */
function limitStrength(
  compiled: CompiledLoad,
  capability: Capability,
  guessN: number,
  firstStep: number,
): number {
  const limit = findLimit((strengthN) => !ascend(compiled, { ...capability, strengthN }, COARSE).made, {
    guess: guessN,
    step: firstStep * guessN,
    tolerance: LIMIT_SHARE * guessN,
    lowest: 0,
    highest: 100 * guessN + 1e5,
  });
  if (limit === null) throw new RangeError('no strength makes this load');
  return limit.above;
}

function bandShareOf(compiled: CompiledLoad): number {
  const { bottomM, lockoutM } = compiled.load;
  const bandNm = integrate((zM) => compiled.bandN(zM), bottomM, lockoutM, compiled.breaksM);
  const workNm = integrate((zM) => compiled.at(zM).totalN, bottomM, lockoutM, compiled.breaksM);
  return workNm > 0 ? bandNm / workNm : 0;
}

function at({ load }: CompiledLoad, share: number): number {
  return load.bottomM + share * (load.lockoutM - load.bottomM);
}
