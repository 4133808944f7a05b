import { describe, expect, it } from 'vitest';
import { chanceToSpare, driftOver, strengthIn } from './askDraws.ts';
import type { Draw } from './Draw.ts';
import { speedSdMps } from './noise.ts';
import { answerSd, saidLeft } from './observation.ts';
import { type EquipmentName, populationPrior } from './parameters.ts';

const draw = (changed: Partial<Draw>): Draw => ({
  ...populationPrior('squat').mean,
  lnTotal: Math.log(200),
  ...changed,
});

describe('the chance that what is spare is not lost on the day', () => {
  it('is that of the luck of one set where days are all alike', () => {
    // One standard deviation of a set, 1.2 % of strength, to spare: the normal distribution says 84.13 %.
    const alike = draw({ lnDaySd: -20 });
    expect(chanceToSpare(0.012, alike)).toBeCloseTo(0.8413, 4);
    expect(chanceToSpare(-0.012, alike)).toBeCloseTo(1 - 0.8413, 4);
  });

  it('keeps six days in a hundred for those that went wrong: 1.5 of a day lower and twice as wide', () => {
    // Days so unlike that a set's luck is nothing; in standard deviations of the day, from tables of the normal distribution:
    // 3 to spare: 0.94 x 0.99865 + 0.06 x Phi((3 - 1.5) / 2) = 0.93873 + 0.06 x 0.77337 = 0.9851
    // none:       0.94 x 0.5     + 0.06 x Phi(-0.75)         = 0.47    + 0.06 x 0.22663 = 0.4836
    // 3 lacking:  0.94 x 0.00135 + 0.06 x Phi(-2.25)         = 0.00127 + 0.06 x 0.01222 = 0.0020
    const unlike = draw({ lnDaySd: 10 });
    const daySd = 0.018 * Math.exp(10);
    expect(chanceToSpare(3 * daySd, unlike)).toBeCloseTo(0.9851, 4);
    expect(chanceToSpare(0, unlike)).toBeCloseTo(0.4836, 4);
    expect(chanceToSpare(-3 * daySd, unlike)).toBeCloseTo(0.002, 4);
  });

  it('scatters from day to day by less than a tested maximum repeats', () => {
    // Day and set together sqrt(1.8^2 + 1.2^2) = 2.16 %; Grgic et al. 2020, Sports Med Open 6:31: 4.2 % in the median of all
    // kinds of people, the lower end of their range 0.5 %. A lifter with 2.16 % to spare on an ordinary day:
    // 0.94 x 0.8413 + 0.06 x Phi((2.163 - 2.7) / sqrt(3.6^2 + 1.2^2) = -0.1415) = 0.7909 + 0.06 x 0.4437 = 0.8175.
    expect(chanceToSpare(Math.hypot(0.018, 0.012), draw({}))).toBeCloseTo(0.8175, 3);
  });
});

describe('what is believed of a lifter before any set', () => {
  const { mean, sd } = populationPrior('squat');

  it('is a gain of 5 % a year, with a beginner’s 30 % at the far end', () => {
    // ln 1.05 = 0.0488 and ln 1.30 = 0.262 in 52 weeks: the latter is rare, one lifter in several hundred, not unheard of.
    expect(driftOver(draw({}), 52).meanLn).toBeGreaterThan(Math.log(1.045));
    expect(driftOver(draw({}), 52).meanLn).toBeLessThan(Math.log(1.06));
    const beginner = (Math.log(1.3) / 52 - mean.weekGain) / sd.weekGain;
    expect(beginner).toBeGreaterThan(2.3);
    expect(beginner).toBeLessThan(3.1);
  });

  it('wanders by 4 % in a year without training for it, as a walk does: with the root of the time', () => {
    // 0.6 % a week (assumption): 0.6 x sqrt(52) = 4.33 %.
    expect(driftOver(draw({}), 52).sdLn).toBeCloseTo(0.0433, 4);
    expect(driftOver(draw({}), -5)).toEqual({ meanLn: 0, sdLn: 0 });
  });

  it.each([
    // Kilograms that 200 kg of raw total become in a suit or shirt, by common practice (no source): a single-ply squat gains
    // about a tenth and a multi-ply one a fifth, a shirt an eighth and a quarter, a deadlift suit hardly anything.
    ['squat', [212, 221, 244]],
    ['bench', [204, 225, 257]],
    ['deadlift', [202, 206, 212]],
  ] as const)('is more in more gear: %s', (lift, kilograms) => {
    const believed = { ...populationPrior(lift).mean, lnTotal: Math.log(200) };
    const worn: EquipmentName[] = ['wraps', 'single-ply', 'multi-ply'];
    const kg = (equipment: EquipmentName) => Math.exp(strengthIn({ equipment, platform: false }, believed));
    expect(worn.map((equipment) => Math.round(kg(equipment)))).toEqual(kilograms);
    // Gear that the club names otherwise helps, too, by about as much as wraps and a single-ply suit.
    expect(kg('other')).toBeGreaterThan(200);
    // On the platform a little more than in an average gym session.
    const raw = { equipment: 'raw' as const };
    expect(Math.exp(strengthIn({ ...raw, platform: true }, believed))).toBeCloseTo(201, 0);
  });
});

describe('how surely a set is read', () => {
  it('no number of alike sets makes a speed surer than what they share', () => {
    // One set errs by sqrt(0.03^2 + 0.025^2) = 0.0391 m/s, four by sqrt(0.015^2 + 0.025^2) = 0.0292, endless ones by 0.025.
    expect(speedSdMps(1)).toBeCloseTo(0.0391, 4);
    expect(speedSdMps(4)).toBeCloseTo(0.0292, 4);
    expect(speedSdMps(1e9)).toBeCloseTo(0.025, 6);
  });

  it('a lifter near failure knows to 0.7 of a rep what is left, and one with five left to 1.7', () => {
    // Halperin et al. 2022, Sports Med 52:377: less exact the farther from failure. 0.7 + 5 x 0.2.
    expect(answerSd(saidLeft, 0)).toBeCloseTo(0.7, 9);
    expect(answerSd(saidLeft, 5)).toBeCloseTo(1.7, 9);
    expect(answerSd(saidLeft, -1)).toBe(answerSd(saidLeft, 0));
  });
});
