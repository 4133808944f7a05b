import { describe, expect, it } from 'vitest';
import type { EvidenceLine } from '#contract/evidence/evidenceReport.ts';
import { evidenceSentence, spokenEffect, verdictOf } from './evidenceSentence.ts';
import { trapSentence } from './trapSentence.ts';

const voice = { massUnit: 'kg', lengthUnit: 'cm', speaksOf: null } as const;

function line(low95: number, low80: number, value: number, high80: number, high95: number): EvidenceLine {
  const effect = { low95, low80, value, high80, high95 };
  const nobody = { lifterId: null, lift: null, variant: null, equipped: null, naive: null };
  return { ...nobody, lifters: 9, observations: 40, effect };
}

const clear = line(0.4, 0.5, 0.7, 0.9, 1);
const leaning = line(-0.1, 0.2, 0.7, 1.2, 1.5);
const open = line(-1, -0.5, 0.3, 1.1, 1.6);

describe('what an effect lets one say', () => {
  it('depends on which of its ranges leave nought out', () => {
    expect([clear, leaning, open, { ...open, effect: null }].map(verdictOf)).toEqual([
      'says',
      'leans',
      'cannotTell',
      'tooLittle',
    ]);
  });

  it('is a plain statement, a probable one, or that the data cannot tell', () => {
    expect(evidenceSentence('carryOver', clear, voice)).toMatch(
      /^10 kg gained .* about 7\.0 kg .*5\.0 to 9\.0 kg\)\.$/,
    );
    expect(evidenceSentence('carryOver', leaning, voice)).toMatch(/probably .* not ruled out\.$/);
    for (const question of ['carryOver', 'variants', 'boxHeight', 'bandShare', 'equipped'] as const) {
      expect(evidenceSentence(question, open, voice)).toMatch(/^The data cannot tell/);
      expect(evidenceSentence(question, open, voice)).not.toContain(' 3.0');
    }
  });

  it('of raw and equipped, which way the difference may go', () => {
    expect(evidenceSentence('equipped', open, voice)).toContain('from 5.0 kg less to 11 kg more');
  });

  it('names the lifter first', () => {
    expect(evidenceSentence('carryOver', clear, { ...voice, speaksOf: 'Ilse' })).toMatch(/^Ilse: 10 kg/);
  });

  it('an inch of box is worth 2.54 centimetres of it, compounded', () => {
    // 1.02^2.54 = exp(2.54 ln 1.02) = 1.0516
    const two = line(1, 1.5, 2, 2.5, 3).effect!;
    expect(spokenEffect('boxHeight', two, { ...voice, lengthUnit: 'in' }).value).toBeCloseTo(5.16, 2);
    expect(evidenceSentence('boxHeight', line(1, 1.5, 2, 2.5, 3), voice)).toMatch(
      /2\.0 % more .* an inch is 5\.2 %\.$/,
    );
  });
});

it('noise that is the greater part is said to be left in', () => {
  const trap = {
    code: 'regressionToTheMean',
    noiseShare: 0.02,
    noiseKnown: 'assumed',
    noisePairs: 3,
  } as const;
  expect(trapSentence({ ...trap, reliability: 0.3 }).text).toContain('as it lies');
  expect(trapSentence({ ...trap, reliability: 0.8 }).text).toContain('corrected');
});
