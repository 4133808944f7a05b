import { describe, expect, it } from 'vitest';
import { foretellDifference } from '../comparison/foretellDifference.ts';
import { USUAL_GAIN_A_WEEK } from '../comparison/usualGain.ts';
import { type WayTest, wayDifference } from '../comparison/wayDifference.ts';
import gains from './gains.json' with { type: 'json' };
import reference from './reference/comparison.json' with { type: 'json' };

const cases = Object.entries(reference.cases);

describe.each(cases)('a comparison of two ways against R: %s', (_name, given) => {
  const { difference } = wayDifference(given.tests as WayTest[], given.atWeek)!;
  const within = (share: number, value: number, expected: number) =>
    expect(Math.abs(value - expected)).toBeLessThan(share * given.standardError);

  it('has the difference, its standard error and its 95 % range of lme4 and lmerTest', () => {
    within(1e-5, difference.value, given.difference);
    within(1e-5, difference.sd, given.standardError);
    expect(difference.degreesOfFreedom).toBe(Math.floor(given.degreesOfFreedom * 1.00001));
    within(1e-4, difference.low95, given.low95);
    within(1e-4, difference.high95, given.high95);
  });

  it('has those of nlme', () => {
    within(1e-3, difference.value, given.nlme.difference);
    within(1e-3, difference.sd, given.nlme.standardError);
  });
});

describe('the foretold difference of two plain groups, tested once before and once after', () => {
  it.each(reference.power)('is that of the noncentral t: $aWay lifters a way', ({ aWay, sd, detectable }) => {
    // The gain between two tests has the variance (12 gainSd)^2 + 2 testSd^2, here in equal parts.
    const scatter = { gainSd: sd / Math.SQRT2 / 12, testSd: sd / 2 };
    const { detectableLn, errorLn } = foretellDifference({
      lifters: [aWay, aWay],
      testWeeks: [0, 12],
      scatter,
      leavingShare: 0,
      seed: 1,
      plays: 150,
    });
    expect(Math.abs(detectableLn! / detectable - 1)).toBeLessThan(0.03);
    expect(Math.abs(detectableLn! - detectable)).toBeLessThan(2 * errorLn!);
  });
});

const aWeek = ({ gainKgADay, firstTotalKg }: typeof gains.men) => (7 * gainKgADay) / firstTotalKg;

it('a usual gain lies between those published of men and of women', () => {
  expect(USUAL_GAIN_A_WEEK).toBeGreaterThan(0.95 * aWeek(gains.men));
  expect(USUAL_GAIN_A_WEEK).toBeLessThan(aWeek(gains.women));
});
