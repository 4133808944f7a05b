import type { Moments } from '../numeric/mixedNormal.ts';
import { normalCdf, normalDensity } from '../numeric/normal.ts';
import { ENTRIES, SET_SD_LN, TAIL, WILD_SHARE } from './noise.ts';

/** What is believed of several quantities as a normal distribution, and the evidence that led there. */
export interface StateThen extends Moments {
  lnEvidence: number;
}

/**
 * A normal distribution that evidence moves, one piece after the other. Whoever takes a piece in first writes into `slope` how
 * what it tells of grows with each quantity.
 */
export class NormalState {
  readonly mean: Float64Array;
  /** Square, row by row. */
  readonly covariance: Float64Array;
  readonly slope: Float64Array;
  lnEvidence = 0;
  /** Covariance times slope: what the quantities have in common with what is told. */
  readonly #shared: Float64Array;

  constructor(size: number) {
    this.mean = new Float64Array(size);
    this.covariance = new Float64Array(size * size);
    this.slope = new Float64Array(size);
    this.#shared = new Float64Array(size);
  }

  /**
   * Something was found to lie `innovation` above where it was expected, with an error of standard deviation `sd`. Errors are Student's: a
   * reading counts less the wilder it is. Returns by how many standard deviations it surprised.
   */
  takeValue(innovation: number, sd: number): number {
    const variance = this.#project();
    const wide = variance + sd * sd;
    const z = innovation / Math.sqrt(wide);
    const trust = Math.min(1, (TAIL + 1) / (TAIL + z * z));
    const total = variance + (sd * sd * 1.2) / trust;
    this.#move(innovation / total, 1 / total);
    this.lnEvidence += -0.5 * Math.log(wide) - ((TAIL + 1) / 2) * Math.log(1 + (z * z) / TAIL);
    return z;
  }

  /** A set's surplus, `surplus` in the mean, is known to be above (side 1) or below (side -1) nought: its first two moments. Returns how likely that was. */
  takeSide(side: 1 | -1, surplus: number): number {
    const variance = this.#project();
    let above = 0;
    let density = 0;
    for (const { share, sdLn } of ENTRIES) {
      const sd = Math.sqrt(variance + sdLn ** 2);
      const z = (side * surplus) / sd;
      above += share * normalCdf(z);
      density += (share * normalDensity(z)) / sd;
    }
    const likelihood = above + WILD_SHARE / 2;
    const alpha = (side * density) / likelihood;
    const sd = Math.sqrt(variance + SET_SD_LN ** 2);
    const beta = Math.max(0, alpha * alpha + (alpha * surplus) / (sd * sd));
    this.#move(alpha, beta);
    this.lnEvidence += Math.log(likelihood);
    return likelihood;
  }

  now(): StateThen {
    return { mean: this.mean.slice(), covariance: this.covariance.slice(), lnEvidence: this.lnEvidence };
  }

  goOnFrom({ mean, covariance, lnEvidence }: StateThen): void {
    this.mean.set(mean);
    this.covariance.set(covariance);
    this.lnEvidence = lnEvidence;
  }

  /** What the quantities have in common with what is told; returns the variance of that. */
  #project(): number {
    const { covariance, slope } = this;
    const shared = this.#shared;
    const n = slope.length;
    let variance = 0;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      const row = i * n;
      for (let j = 0; j < n; j++) sum += covariance[row + j]! * slope[j]!;
      shared[i] = sum;
      variance += slope[i]! * sum;
    }
    return Math.max(variance, 1e-12);
  }

  /** Moves the mean by alpha times what is shared, and takes beta times its square off the covariance. */
  #move(alpha: number, beta: number): void {
    const { mean, covariance } = this;
    const shared = this.#shared;
    const n = mean.length;
    for (let i = 0; i < n; i++) {
      mean[i]! += shared[i]! * alpha;
      const scaled = shared[i]! * beta;
      const row = i * n;
      for (let j = 0; j < n; j++) covariance[row + j]! -= scaled * shared[j]!;
    }
  }
}
