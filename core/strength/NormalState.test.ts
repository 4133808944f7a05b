import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf } from '../numeric/normal.ts';
import { NormalState } from './NormalState.ts';

/** One quantity believed to be normal about 0, of which `slope` times as much is told. */
function stateOf(sd: number, slope: number): NormalState {
  const state = new NormalState(1);
  state.covariance[0] = sd * sd;
  state.slope[0] = slope;
  return state;
}

/** Total, mean and standard deviation of a normal of this spread about 0, weighed by how likely each value makes what was seen. */
function weighed(sd: number, likelihood: (x: number) => number) {
  let [sum, first, second] = [0, 0, 0];
  for (let i = -1200; i <= 1200; i++) {
    const x = (i / 200) * sd;
    const weight = Math.exp(-((i / 200) ** 2) / 2) * likelihood(x);
    sum += weight;
    first += weight * x;
    second += weight * x * x;
  }
  const mean = first / sum;
  return { chance: sum / (200 * Math.sqrt(2 * Math.PI)), mean, sd: Math.sqrt(second / sum - mean * mean) };
}

const sds = fc.integer({ min: 1, max: 30 }).map((n) => n / 100);
const slopes = fc.integer({ min: 5, max: 20 }).map((n) => n / 10);

// docs/model.md, "strength": luck of a set 0.012; two entries in a hundred off by 0.12; three in a thousand say nothing.
const goes = (x: number) => 0.977 * normalCdf(x / 0.012) + 0.02 * normalCdf(x / 0.12) + 0.0015;

describe('a normal belief', () => {
  it('meets what was made or missed by its mean and by how likely it was, its spread nearly so', () => {
    const places = fc.integer({ min: -20, max: 20 }).map((n) => n / 10);
    fc.assert(
      fc.property(sds, slopes, places, fc.constantFrom(1 as const, -1 as const), (sd, slope, place, side) => {
        const surplus = place * sd * slope;
        const state = stateOf(sd, slope);
        const likelihood = state.takeSide(side, surplus);
        const expected = weighed(sd, (x) => goes(side * (surplus + slope * x)));
        expect(likelihood).toBeCloseTo(expected.chance, 5);
        expect(state.lnEvidence).toBeCloseTo(Math.log(expected.chance), 3);
        expect(Math.abs(state.mean[0]! - expected.mean)).toBeLessThan(0.002 * sd);
        expect(Math.abs(Math.sqrt(state.covariance[0]!) / expected.sd - 1)).toBeLessThan(0.1);
      }),
      { numRuns: 30 },
    );
  });

  it('follows a reading whose errors are Student’s: as far as it is sure, and less the wilder it is', () => {
    const [sd, slope] = [0.05, 1.6];
    const after = (share: number, wild: number) => {
      const error = share * sd * slope;
      const state = stateOf(sd, slope);
      const found = wild * Math.hypot(error, sd * slope);
      expect(state.takeValue(found, error)).toBeCloseTo(wild, 9);
      return { state, error, found };
    };
    for (const share of [1, 2, 5])
      for (const wild of [-2, -1, 0, 1, 2]) {
        const { state, error, found } = after(share, wild);
        const expected = weighed(sd, (x) => (1 + ((found - slope * x) / error) ** 2 / 4) ** -2.5 / error);
        expect(Math.abs(state.mean[0]! - expected.mean)).toBeLessThan(0.1 * sd);
        expect(Math.abs(Math.sqrt(state.covariance[0]!) / expected.sd - 1)).toBeLessThan(0.12);
        expect(Math.abs(state.lnEvidence - Math.log(expected.chance))).toBeLessThan(0.2);
      }
    expect(after(1, 6).state.mean[0]!).toBeLessThan(after(1, 3).state.mean[0]!);
  });

  it('moves what hangs together with what is told, and goes on from where it was', () => {
    // Two quantities of which the second is the first and something of its own: what tells of the first moves both.
    const state = new NormalState(2);
    state.covariance.set([0.04, 0.04, 0.04, 0.13]);
    state.slope.set([1, 0]);
    const before = state.now();
    state.takeValue(0.1, 0.2);
    const [first, second] = state.mean;
    expect(first).toBeGreaterThan(0.03);
    expect(second).toBeCloseTo(first!, 12);
    // What the second has of its own stays as unsure as it was.
    expect(state.covariance[3]! - state.covariance[0]!).toBeCloseTo(0.09, 12);
    expect(state.covariance[1]).toBeCloseTo(state.covariance[2]!, 15);
    state.goOnFrom(before);
    expect(state.now()).toEqual(before);
  });
});
