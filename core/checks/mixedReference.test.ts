import { describe, expect, it } from 'vitest';
import { contrast, satterthwaite } from '../evidence/contrast.ts';
import { fitMixed } from '../evidence/fitMixed.ts';
import type { MixedProblem } from '../evidence/mixedProfile.ts';
import reference from './reference/mixed.json' with { type: 'json' };

interface Case extends MixedProblem {
  estimates: number[];
  standardErrors: number[];
  degreesOfFreedom: number[] | null;
  residualSd: number;
  randomSds: number | number[];
  correlation: number | number[];
  deviance: number;
  ownLines: { group: string; effects: number | number[]; lastSd: number }[];
}

/** R writes a list of one as its only element. */
const cases = Object.entries(reference.cases as unknown as Record<string, Case>);
const listOf = (value: number | number[]) => [value].flat();
const problemOf = ({ values, fixed, random, groups, method }: Case) => ({
  values,
  fixed,
  random,
  groups,
  method,
});
const near = (value: number, expected: number) =>
  expect(Math.abs(value - expected)).toBeLessThan(1e-5 * Math.abs(expected));

const unit = (k: number, length: number) => Array.from({ length }, (_, j) => (j === k ? 1 : 0));

describe.each(cases)('mixed-effects regression against R: %s', (_name, given) => {
  const fit = fitMixed(problemOf(given));

  it('has the estimates and standard errors of lme4 to 1e-5', () => {
    given.estimates.forEach((estimate, k) => near(fit.fixed[k]!, estimate));
    given.standardErrors.forEach((sd, k) => near(Math.sqrt(fit.covariance[k]![k]!), sd));
    near(fit.deviance, given.deviance);
  });

  it('has its spreads between and within groups', () => {
    near(fit.residualSd, given.residualSd);
    listOf(given.randomSds).forEach((sd, k) => {
      expect(Math.abs(fit.randomSds[k]! - sd)).toBeLessThan(2e-5 * sd);
    });
    listOf(given.correlation).forEach((correlation) => {
      expect(fit.correlation).toBeCloseTo(correlation, 4);
    });
  });

  it('has the degrees of freedom of lmerTest', () => {
    for (const [k, df] of (given.degreesOfFreedom ?? []).entries()) {
      expect(satterthwaite(fit, unit(k, given.estimates.length))).toBe(Math.max(1, Math.floor(df * 1.00001)));
    }
  });

  it("has each group's own line, shrunken, with its standard error", () => {
    const last = given.fixed[0]!.map((_, k) => (k === given.fixed[0]!.length - 1 ? 1 : 0));
    for (const { group, effects, lastSd } of given.ownLines) {
      const own = fit.groups.find(({ name }) => name === group)!;
      const expected = listOf(effects);
      expected.forEach((effect, k) => {
        expect(Math.abs(own.effect[k]! - effect)).toBeLessThan(1e-5 * listOf(given.randomSds)[k]!);
      });
      const ofGroup = expected.map((_, k) => (k === expected.length - 1 ? 1 : 0));
      near(contrast(fit, last, { group: own, ofGroup }).sd, lastSd);
    }
  });
});

describe('mixed-effects regression beside the other package of R', () => {
  it('agrees with nlme on the sleep study', () => {
    const fit = fitMixed(problemOf(cases.find(([name]) => name === 'sleepSlope')![1]));
    const { estimates, standardErrors } = reference.nlmeSleepSlope;
    estimates.forEach((estimate, k) => near(fit.fixed[k]!, estimate));
    standardErrors.forEach((sd, k) => near(Math.sqrt(fit.covariance[k]![k]!), sd));
  });
});
