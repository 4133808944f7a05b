import { describe, expect, it } from 'vitest';
import { massQuestion } from './massQuestion.ts';
import { meantInstead } from './meantInstead.ts';
import { usualQuestion } from './usualQuestion.ts';

/** Exact: NIST SP 811 (2008), appendix B. */
const LB_KG = 0.45359237;
const words = (offers: readonly { word: string }[]) => offers.map(({ word }) => word);
const isStature = (si: number) => si >= 1 && si <= 2.5;
const near = (kg: number) => (si: number) => Math.abs(si / kg - 1) < 0.01;

describe('what may have been meant by a number', () => {
  it('is metres where 1.80 stands in a field of centimetres, inches where 70 does', () => {
    expect(words(meantInstead(0.018, 'cm', isStature))).toEqual(['Metres? 180 cm']);
    // 70 in are 177.8 cm: an inch is 2.54 cm.
    expect(words(meantInstead(0.7, 'cm', isStature))).toEqual(['Inches? 177.8 cm']);
    // A field of inches into which centimetres were typed.
    expect(words(meantInstead(178 * 0.0254, 'in', isStature))).toEqual(['Centimetres? 70.08 in']);
    expect(meantInstead(0.2, 'cm', isStature)).toEqual([]);
  });

  it('is one that the field takes, back and forth between pounds and kilograms', () => {
    expect(meantInstead(220, 'kg', near(220 * LB_KG))[0]!.valueSi).toBeCloseTo(220 * LB_KG, 9);
    expect(meantInstead(100 * LB_KG, 'lb', near(100))[0]!.valueSi).toBeCloseTo(100, 9);
    expect(words(meantInstead(825, 'kg', near(82.5)))).toEqual(['A nought too many? 82.5 kg']);
    // A newton is 1 / 9.80665 kgf (CGPM 1901).
    expect(words(meantInstead(350 * 9.80665, 'kgf', near(350)))[0]).toBe('Newtons? 35.7 kg');
  });
});

describe('a mass far from what is known of a lifter', () => {
  const usual = { called: 'the heaviest squat on record', massKg: 100, mostTimes: 1.5, leastShare: 0.4 };

  it('is asked about with what it is far from, and is not where it is near', () => {
    expect(massQuestion(150, 'kg', usual)).toBeNull();
    expect(massQuestion(40, 'kg', usual)).toBeNull();
    const high = massQuestion(220, 'kg', usual)!;
    expect(high.sentence).toBe('This is 2.2 times the heaviest squat on record, 100 kg.');
    expect(words(high.offers)).toEqual(['Pounds? 99.79 kg']);
    // 60 lb under a squat of 100 kg: 60 kg were meant, 132.28 lb.
    const low = massQuestion(60 * LB_KG, 'lb', usual)!;
    expect(low.sentence).toBe('This is only 27 % of the heaviest squat on record, 220.46 lb.');
    expect(words(low.offers)).toEqual(['Kilograms? 132.28 lb']);
  });
});

describe('a length outside of what is usual', () => {
  it('is asked about in the unit of its field', () => {
    const asked = usualQuestion(0.0042, 'cm', 'Bench pad', [0.3, 0.6])!;
    expect(asked.sentence).toBe('Bench pad is 0.4 cm; usual is 30 cm to 60 cm.');
    expect(words(asked.offers)).toEqual(['Metres? 42 cm']);
    expect(usualQuestion(0.42, 'cm', 'Bench pad', [0.3, 0.6])).toBeNull();
  });
});
