import { repEffortS } from '../effort/repEffort.ts';
import type { Tiring } from '../effort/Tiring.ts';
import { reboundShare, shapeFrom } from '../lifter/lifterCapability.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import { type CompiledLoad, compileLoad, griddedLoad, withBarKg } from '../load/compileLoad.ts';
import { meanBandShare } from '../load/meanBandShare.ts';
import { findLimit } from '../numeric/findLimit.ts';
import { gridded } from '../numeric/gridded.ts';
import { ascend, COARSE } from '../rep/ascend.ts';
import type { Capability } from '../rep/Capability.ts';
import { strengthCurve } from '../rep/strengthCurve.ts';
import type { Rigging } from './Rigging.ts';
import { keptTable } from './tableStore.ts';

/**
 * How a lifter's strength shows in one rigging, tabulated so that no rep need be simulated again. By the model a rep
 * depends on strength S only through the surplus `u = ln(S / S_limit)`, where `S_limit` just makes the rep; and on
 * bar and moved body only through their sum, the total mass. The lifter's own shape is told by three coordinates, top
 * speed, slope and rebound: each quantity is tabulated on a grid of them (`shapeNodes`) and runs straight between.
 */
export interface Response {
  /** ln of total masses at which the table was made, ascending; one where nothing but mass is on the bar. */
  lnTotals: number[];
  tables: ResponseTable[];
}

/** One total mass. Rows of shapes run over the grid's nodes, rebound fastest, then slope, then top speed. */
export interface ResponseTable {
  /** ln(S_limit / (total mass x g)) for every shape. */
  lnLimit: Float64Array;
  /** For every shape a row: mean speed (m/s) and effort (s) at the surpluses `ROOT_STEP` squared times 0, 1, 4, 9 ... */
  speedMps: Float64Array;
  effortS: Float64Array;
  /** For every shape a row: where a rep stops that lacks the squares of `STOP_ROOTS`. */
  stopS: Float64Array;
  /** Peak over mean speed at the same surpluses, at the population's shape. */
  peakRatio: Float64Array;
  /** Share of the mean load, moved body included, that bands carry. */
  bandShare: number;
}

/** Square roots of the surpluses tabulated: speed leaves its limit like a square root. */
export const ROOT_STEP = 0.1;
export const ROOTS = 14;
/** The largest of them. */
export const FARTHEST_SURPLUS = ((ROOTS - 1) * ROOT_STEP) ** 2;
/** Square roots of the shortfalls at which the place of a miss is tabulated: it leaves the sticking point like a square root. */
export const STOP_ROOTS = [0.05, 0.17, 0.29, 0.41, 0.53, 0.65] as const;

/**
 * The shapes that are tabulated: what is added to ln top speed and to the slope, and the rebound as a share of force.
 * All of slope by rebound stand at the middle top speed; at the two others the differences from it are smooth enough for
 * a few of them.
 */
export interface ShapeNodes {
  /** Below the middle, the middle, above it. */
  lnMaxSpeed: readonly [number, number, number];
  slope: readonly number[];
  rebound: readonly number[];
  /** Places in `slope` and `rebound` at the outer top speeds. */
  outerSlopes: readonly number[];
  outerRebounds: readonly number[];
}

/** Reaches two to three standard deviations of how lifters differ; dense where quantities bend. */
export function shapeNodes(shape: PopulationShape, start: Rigging['start']): ShapeNodes {
  const share = reboundShare(start);
  const middle = shape.rebound * share;
  const times = start === 'free' ? [0.4, 0.8, 1.2, 2] : [0, 0.25 / share, 0.5 / share, 1 / share];
  return {
    lnMaxSpeed: [-0.5, 0, 0.5],
    slope: [-0.5, -0.25, 0, 0.25, 0.5],
    rebound: middle === 0 ? [0] : times.map((factor) => factor * middle),
    outerSlopes: [1, 3],
    outerRebounds: middle === 0 ? [0] : [1, 2],
  };
}

/** The shapes in the order of a table's lists. */
function shapesOf({
  lnMaxSpeed: [low, middle, high],
  slope,
  rebound,
  outerSlopes,
  outerRebounds,
}: ShapeNodes) {
  const inner = slope.flatMap((by, j) =>
    rebound.map((value, k) => ({ lnMaxSpeed: middle, slope: by, rebound: value, j, k })),
  );
  const outer = inner.filter(({ j, k }) => outerSlopes.includes(j) && outerRebounds.includes(k));
  return [...inner, ...[low, high].flatMap((lnMaxSpeed) => outer.map((shape) => ({ ...shape, lnMaxSpeed })))];
}

/** Strength is looked for to this share: far within what a set can tell. */
const LIMIT_SHARE = 4e-4;
/** A table value a hair above the limit stands for the limit itself. */
const JUST_ABOVE = 2.5e-4;
/** Total masses of neighbouring tables, in ln: all tables of all riggings stand on one ladder, to be shared. */
const MASS_STEP_LN = 0.3;
/** Without bands and chains the mass does not matter: one place on the ladder stands for all. */
const ANY_STEP = 15;

/** Which shapes a table is made for; `usual`: the population's stands for all, for who asks only what most lifters do. */
export type ShapesTold = 'all' | 'usual';

/**
 * Tables of one rigging for total masses from `lowKg` to `highKg`. Throws RangeError where no strength makes the rep.
 */
export function tabulateResponse(
  rigging: Rigging,
  shape: PopulationShape,
  tiring: Tiring,
  lowKg: number,
  highKg: number,
  told: ShapesTold = 'all',
): Response {
  const compiled = compileLoad({ ...rigging.load, barKg: lowKg });
  const { load } = compiled;
  const straight = [load.bands, load.hungBands, load.chains].every((hung) => hung.length === 0);
  const first = straight ? ANY_STEP : Math.floor(Math.log(lowKg) / MASS_STEP_LN);
  const last = straight ? ANY_STEP : Math.ceil(Math.log(highKg) / MASS_STEP_LN);
  const lnTotals = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * MASS_STEP_LN);
  return {
    lnTotals,
    tables: lnTotals.map((lnTotal) =>
      keptTable(shape, told, rigging, compiled, lnTotal, () =>
        tabulate(rigging, shape, tiring, compiled, Math.exp(lnTotal), told),
      ),
    ),
  };
}

/** Pulls and strength curves are read off so many cells: to 1e-5 of them, far within the precision of a limit. */
const CELLS = 256;

type Curve = (zM: number) => number;

function griddedCurve({ load }: CompiledLoad, capability: Capability): Curve {
  return gridded(strengthCurve(capability), load.bottomM, load.lockoutM, CELLS);
}

function tabulate(
  rigging: Rigging,
  shape: PopulationShape,
  tiring: Tiring,
  anyBar: CompiledLoad,
  totalKg: number,
  told: ShapesTold,
): ResponseTable {
  // Bar and body rise together, so that all of the mass may as well be on the bar.
  const compiled = griddedLoad(withBarKg(anyBar, totalKg), CELLS);
  const weightN = totalKg * compiled.load.gravityMps2;
  const { movedBodyShare: _, ...usualShape } = shapeFrom(shape, rigging.start);
  const middle: Capability = { ...usualShape, strengthN: 1, movedBodyKg: 0, range: rigging.range };
  const heaviestN = Math.max(...[0, 0.5, 1].map((x) => compiled.totalN(at(compiled, x))));
  const usualCurve = griddedCurve(compiled, middle);
  const middleN = limitStrength(compiled, middle, usualCurve, heaviestN, 0.2);
  const usual = repsAbove(compiled, middle, usualCurve, middleN, tiring, EVERY_ROOT);
  const nodes = shapeNodes(shape, rigging.start);
  const shapes = shapesOf(nodes);
  const limitsN: number[] = [];
  const speedMps = new Float64Array(shapes.length * ROOTS);
  const effortS = new Float64Array(shapes.length * ROOTS);
  const stopS = new Float64Array(shapes.length * STOP_ROOTS.length);
  const put = (i: number, { limitN, speeds, efforts, stops }: ShapeRow) => {
    limitsN.push(limitN);
    speedMps.set(speeds, i * ROOTS);
    effortS.set(efforts, i * ROOTS);
    stopS.set(stops, i * STOP_ROOTS.length);
  };
  const rowOf = ({ lnMaxSpeed, slope, rebound, j, k }: (typeof shapes)[number], curve: Curve): ShapeRow => {
    const capability: Capability = {
      ...middle,
      maxSpeedMps: middle.maxSpeedMps * Math.exp(lnMaxSpeed),
      slope: middle.slope + slope,
      rebound,
    };
    const guessN = guessFrom(limitsN, nodes, j, k) ?? middleN;
    const limitN = limitStrength(compiled, capability, curve, guessN, 0.01);
    const { speeds, efforts } = repsAbove(compiled, capability, curve, limitN, tiring, SOME_ROOTS);
    return {
      limitN,
      speeds: likeUsual(speeds, usual.speeds),
      efforts: likeUsual(efforts, usual.efforts),
      stops: stopsBelow(compiled, capability, curve, limitN),
    };
  };
  if (told === 'all') {
    const curves = nodes.slope.map((by) => griddedCurve(compiled, { ...middle, slope: middle.slope + by }));
    shapes.forEach((one, i) => put(i, rowOf(one, curves[one.j]!)));
  } else {
    const stops = stopsBelow(compiled, middle, usualCurve, middleN);
    shapes.forEach((_, i) => put(i, { limitN: middleN, ...usual, stops }));
  }
  return {
    lnLimit: Float64Array.from(limitsN, (limitN) => Math.log(limitN / weightN)),
    speedMps,
    effortS,
    stopS,
    peakRatio: usual.peaks.map((peak, j) => (usual.speeds[j]! > 0 ? peak / usual.speeds[j]! : 1)),
    bandShare: meanBandShare(compiled),
  };
}

/** What a table holds of one shape; `limitN` makes just the rep. */
interface ShapeRow {
  limitN: number;
  speeds: Float64Array;
  efforts: Float64Array;
  stops: readonly number[];
}

/** The next limit by what those found before say: changed as it changed beside there; at an outer top speed the middle's. */
function guessFrom(found: readonly number[], { slope, rebound }: ShapeNodes, j: number, k: number) {
  const row = rebound.length;
  const at = (slopeAt: number, reboundAt: number) => found[slopeAt * row + reboundAt]!;
  if (found.length >= slope.length * row) return at(j, k);
  if (j === 0) return found[found.length - 1];
  return k === 0 ? at(j - 1, 0) : (at(j - 1, k) * at(j, k - 1)) / at(j - 1, k - 1);
}

/** Off the population's shape some of the surpluses are enough: the differences are smooth. */
const EVERY_ROOT = Array.from({ length: ROOTS }, (_, j) => j);
const SOME_ROOTS = [0, 2, 5, 9, ROOTS - 1];

/** Reps at the surpluses of some roots; the other places stay nought. */
function repsAbove(
  compiled: CompiledLoad,
  capability: Capability,
  curve: Curve,
  limitN: number,
  tiring: Tiring,
  roots: readonly number[],
) {
  const speeds = new Float64Array(ROOTS);
  const peaks = new Float64Array(ROOTS);
  const efforts = new Float64Array(ROOTS);
  const heightM = compiled.load.lockoutM - compiled.load.bottomM;
  for (const j of roots) {
    const surplus = Math.max(JUST_ABOVE, (j * ROOT_STEP) ** 2);
    const strong = { ...capability, strengthN: limitN * Math.exp(surplus) };
    const ascent = ascend(compiled, strong, COARSE, curve);
    const end = ascent.states[ascent.states.length - 1]!;
    speeds[j] = ascent.made ? heightM / end.t : 0;
    peaks[j] = ascent.turns.reduce((v, turn) => Math.max(v, turn.state.v), end.v);
    efforts[j] = repEffortS(compiled, strong, ascent, tiring.loweringS, curve);
  }
  return { speeds, peaks, efforts };
}

/** Where reps stop that lack the squares of `STOP_ROOTS`, as a share of the range. */
function stopsBelow(compiled: CompiledLoad, capability: Capability, curve: Curve, limitN: number): number[] {
  const { fromM, toM } = capability.range;
  return STOP_ROOTS.map((root) => {
    const weak = { ...capability, strengthN: limitN * Math.exp(-(root ** 2)) };
    const { states } = ascend(compiled, weak, COARSE, curve);
    return (states[states.length - 1]!.z - fromM) / (toM - fromM);
  });
}

/** Between the places of `SOME_ROOTS` the ratio to the usual values runs straight. */
function likeUsual(values: Float64Array, usual: Float64Array): Float64Array {
  const ratio = (j: number) => (usual[j]! > 0 ? values[j]! / usual[j]! : 1);
  for (const [i, high] of SOME_ROOTS.slice(1).entries()) {
    const low = SOME_ROOTS[i]!;
    for (let j = low + 1; j < high; j++) {
      const x = (j - low) / (high - low);
      values[j] = usual[j]! * (ratio(low) * (1 - x) + ratio(high) * x);
    }
  }
  return values;
}

/** The least strength that makes the rep. A push that is not eased finds it in fewer steps and, so slow a bar, no elsewhere. */
function limitStrength(
  compiled: CompiledLoad,
  capability: Capability,
  curve: Curve,
  guessN: number,
  firstStep: number,
): number {
  const limit = findLimit(
    (strengthN) => !ascend(compiled, { ...capability, strengthN, easing: 0 }, COARSE, curve).made,
    {
      guess: guessN,
      step: firstStep * guessN,
      tolerance: LIMIT_SHARE * guessN,
      lowest: 0,
      highest: 100 * guessN + 1e5,
    },
  );
  if (limit === null) throw new RangeError('no strength makes this load');
  return (limit.below + limit.above) / 2;
}

function at({ load }: CompiledLoad, share: number): number {
  return load.bottomM + share * (load.lockoutM - load.bottomM);
}
