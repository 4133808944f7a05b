import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from './formatQuantity.ts';
import { parseQuantity } from './parseQuantity.ts';
import { fromSi, toSi, type Unit, units } from './units.ts';

const LB_KG = 0.45359237; // NIST SP 811 (2008), appendix B.8: exact
const INCH_M = 0.0254; // the same

function valueOf(text: string, unit: Unit): number {
  const parsed = parseQuantity(text, unit);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.valueSi;
}

describe('parseQuantity', () => {
  it.each<[string, Unit, number]>([
    ['225', 'lb', 225 * LB_KG],
    ['225', 'kg', 225],
    ['225 lb', 'kg', 225 * LB_KG],
    ['225lbs', 'kg', 225 * LB_KG],
    ['102.5kg', 'lb', 102.5],
    [' 102,5 kg ', 'lb', 102.5],
    ['.5 Kg', 'lb', 0.5],
    ['14 in', 'cm', 14 * INCH_M],
    ['14"', 'cm', 14 * INCH_M],
    ['1.04 m', 'in', 1.04],
    ['104', 'cm', 1.04],
    ['41 mm', 'cm', 0.041],
    ['5\'10"', 'cm', 70 * INCH_M],
    ['5’ 10.5”', 'cm', 70.5 * INCH_M],
    ['5 ft 10 in', 'cm', 70 * INCH_M],
    ["6'", 'cm', 72 * INCH_M],
    ['-0.15 m', 'cm', -0.15],
    ['-5\'10"', 'cm', -70 * INCH_M],
    ['350', 'N', 350],
    ['35 kg', 'N', 35 * 9.80665],
    ['78 lb', 'N', 78 * LB_KG * 9.80665],
    ['35 kgf', 'N', 35 * 9.80665],
    ['0,125 m', 'cm', 0.125],
  ])('reads %s, default %s', (text, unit, si) => {
    expect(valueOf(text, unit)).toBeCloseTo(si, 10);
  });

  it.each<[string, Unit, string]>([
    ['', 'kg', 'Nothing was typed'],
    ['heavy', 'kg', '"heavy" is not a mass'],
    ['14 in', 'kg', 'is a length where a mass is asked for'],
    ['80 kg', 'cm', 'is a mass where a length is asked for'],
    ['12 stone', 'kg', 'the unit "stone"'],
    ['1,000', 'lb', 'in two ways'],
    ['1.2.3', 'kg', 'is not a mass'],
    ['1e3', 'kg', 'is not a mass'],
    ['9'.repeat(400), 'kg', 'is not a mass'],
    ['NaN', 'N', 'is not a force'],
  ])('refuses %j (default %s) in one sentence', (text, unit, why) => {
    const parsed = parseQuantity(text, unit);
    expect(parsed).toMatchObject({ ok: false });
    const { message } = parsed as { message: string };
    expect(message).toContain(why);
    expect(message).toMatch(/\.$/);
    expect(message).not.toMatch(/[.!?] [A-Z]/);
  });

  it.each<[Unit, number]>([
    ['kg', 2],
    ['cm', 4],
    ['N', 3],
  ])('names examples that it reads itself where %s are asked for', (unit, count) => {
    const parsed = parseQuantity('heavy', unit);
    const { message } = parsed as { message: string };
    const examples = message.slice(message.indexOf('for example ') + 12, -1).split(/, | or /);
    expect(examples).toHaveLength(count);
    for (const example of examples) expect(valueOf(example, unit)).toBeGreaterThan(0);
  });

  const anyUnit = fc.constantFrom(...(Object.keys(units) as Unit[]));

  it('reads back what formatQuantity wrote, to the last place shown', () => {
    fc.assert(
      fc.property(anyUnit, fc.integer({ min: -99_999, max: 99_999 }), (unit, hundredths) => {
        const si = toSi(hundredths / 100, unit);
        expect(valueOf(formatQuantity(si, unit, 2), unit)).toBeCloseTo(si, 9);
      }),
    );
  });

  it('never throws and never answers with NaN, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), anyUnit, (text, unit) => {
        const parsed = parseQuantity(text, unit);
        expect(parsed.ok ? Number.isFinite(parsed.valueSi) : parsed.message.length > 0).toBe(true);
      }),
    );
  });

  it('goes to SI and back without loss', () => {
    fc.assert(
      fc.property(anyUnit, fc.integer({ min: -1e9, max: 1e9 }), (unit, thousandths) => {
        const value = thousandths / 1000;
        expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThanOrEqual(
          1e-15 * Math.abs(value),
        );
      }),
    );
  });
});
