import type { LnRatio } from '../numeric/quantity.ts';
import { FARTHEST_SURPLUS, ROOT_STEP, ROOTS, STOP_ROOTS } from './response.ts';

/** Most reps that are counted. */
const MOST_REPS = 40;

/** How reps of one rigging and mass go for one set of parameters, over the surplus of strength: what follows from its lists is worked out when first asked for. */
export class ReadTable {
  /** Mean speed over the surplus. */
  readonly speedMps: Float64Array;
  /** ln strength lost by a rep without any bend, at the surplus of its start. */
  readonly lossLn: Float64Array;
  /** What a rep of a set costs, in times that loss. */
  readonly costOf: (rep: number) => number;
  readonly #stopS: Float64Array;
  readonly #peakRatio: Float64Array;
  #peakMps: Float64Array | null = null;
  /** Surpluses with which just 1, 2, 3 ... reps are made, as far as they were asked for. */
  readonly #needed = [0];
  readonly #lastMps: Float64Array[] = [];

  constructor(
    speedMps: Float64Array,
    lossLn: Float64Array,
    costOf: (rep: number) => number,
    stopS: Float64Array,
    peakRatio: Float64Array,
  ) {
    this.speedMps = speedMps;
    this.lossLn = lossLn;
    this.costOf = costOf;
    this.#stopS = stopS;
    this.#peakRatio = peakRatio;
  }

  /** Peak speed over the surplus. */
  peakMps(): Float64Array {
    this.#peakMps ??= this.speedMps.map((mps, j) => mps * this.#peakRatio[j]!);
    return this.#peakMps;
  }

  /** Speed of the last of `reps` reps over the surplus before the first. */
  lastMps(reps: number): Float64Array {
    let found = this.#lastMps[reps];
    if (found === undefined) {
      found = new Float64Array(ROOTS);
      for (let j = 0; j < ROOTS; j++)
        found[j] = atSurplus(this.speedMps, this.surplusAtRep((j * ROOT_STEP) ** 2, reps));
      this.#lastMps[reps] = found;
    }
    return found;
  }

  /** Mean of the speeds of `reps` reps, the first at this surplus. */
  meanMps(surplus: LnRatio, reps: number): number {
    return this.#sumOverSet(this.speedMps, surplus, reps).sum / reps;
  }

  /** The surplus that is left at the start of rep `rep` (from 1). */
  surplusAtRep(surplus: LnRatio, rep: number): LnRatio {
    return this.#sumOverSet(this.lossLn, surplus, rep - 1).left;
  }

  /** ln strength that a set leaves missing after its end: its reps at what each had to spare, without the bend. */
  lossOfSet(surplus: LnRatio, reps: number): LnRatio {
    return this.#sumOverSet(this.lossLn, surplus, reps).sum;
  }

  /** A tabulated quantity summed over the starts of a set's reps, and the surplus that is left after the last of them. */
  #sumOverSet(values: Float64Array, surplus: LnRatio, reps: number): { sum: number; left: number } {
    let [sum, left] = [0, surplus];
    for (let rep = 1; rep <= reps; rep++) {
      sum += atSurplus(values, left);
      left -= this.costOf(rep) * atSurplus(this.lossLn, left);
    }
    return { sum, left };
  }

  /** Surplus with which just `reps` reps are made (any number from 1, between whole ones straight). */
  neededFor(reps: number): LnRatio {
    const whole = Math.floor(reps);
    const low = this.#rung(whole);
    return whole === reps ? low : low + (reps - whole) * (this.#rung(whole + 1) - low);
  }

  /** How many reps a surplus is good for, between whole ones straight: the middle of what counts as n reps is n. */
  repsPossible(surplus: LnRatio): number {
    return this.repsAlong(surplus, 0, single)[0]!;
  }

  /** The same for surpluses from `from` on in even steps upwards, written to `possible`. */
  repsAlong(from: number, step: number, possible: Float64Array): Float64Array {
    let n = 1;
    let low = 0;
    let high = this.#rung(2);
    let perLn = 1 / high;
    for (let i = 0; i < possible.length; i++) {
      const surplus = from + i * step;
      while (high < surplus && high < FARTHEST_SURPLUS && n + 1 < MOST_REPS) {
        n++;
        low = high;
        high = this.#rung(n + 1);
        perLn = 1 / (high - low);
      }
      possible[i] = Math.min(MOST_REPS, n + (surplus - low) * perLn - 0.5);
    }
    return possible;
  }

  /** Where a miss stops, by the square root of the strength it lacked: straight between the tabulated ones, constant outside. */
  stopAt(root: number): number {
    const stopS = this.#stopS;
    const x = (root - STOP_ROOTS[0]) / (STOP_ROOTS[1] - STOP_ROOTS[0]);
    if (x <= 0) return stopS[0]!;
    const j = Math.floor(x);
    if (j >= stopS.length - 1) return stopS[stopS.length - 1]!;
    return stopS[j]! + (x - j) * (stopS[j + 1]! - stopS[j]!);
  }

  #rung(reps: number): number {
    while (this.#needed.length < reps) this.#climb();
    return this.#needed[reps - 1]!;
  }

  /** The next rungs, each back from its last rep, which takes nothing to start with but being made. */
  #climb(): void {
    const from = this.#needed.length;
    roots.fill(0);
    for (let rep = from + ABREAST - 1; rep > 0; rep--) {
      const cost = this.costOf(rep);
      for (let i = Math.max(0, rep - from); i < ABREAST; i++)
        roots[i] = rootBefore(this.lossLn, roots[i]!, cost);
    }
    for (const root of roots) this.#needed.push(root * root);
  }
}

/** So many rungs at once, since one alone waits for its own roots. */
const ABREAST = 6;
const roots = new Float64Array(ABREAST);
const single = new Float64Array(1);

/** A tabulated quantity at a surplus: straight between the roots, constant outside. */
export function atSurplus(values: Float64Array, surplus: LnRatio): number {
  if (!(surplus > 0)) return values[0]!;
  const x = Math.sqrt(surplus) / ROOT_STEP;
  const j = Math.floor(x);
  if (j >= ROOTS - 1) return values[ROOTS - 1]!;
  const low = values[j]!;
  return low + (x - j) * (values[j + 1]! - low);
}

/**
 * Root of the surplus before a rep that costs `cost` times its loss, after which the square of `after` is left. Losses run
 * straight over the root r, so that `r^2 = after^2 + cost loss(r)` is a quadratic between two tabulated ones.
 */
function rootBefore(lossLn: Float64Array, after: number, cost: number): number {
  const left = after * after;
  let j = Math.min(Math.floor(after / ROOT_STEP), ROOTS - 1);
  while (j < ROOTS - 1 && ((j + 1) * ROOT_STEP) ** 2 - cost * lossLn[j + 1]! < left) j++;
  const level = left + cost * lossLn[j]!;
  if (j === ROOTS - 1) return Math.sqrt(level);
  const half = (0.5 * cost * (lossLn[j + 1]! - lossLn[j]!)) / ROOT_STEP;
  return half + Math.sqrt(half * half + level - 2 * half * j * ROOT_STEP);
}
