import { describe, expect, it } from 'vitest';
import { formatQuantity } from './formatQuantity.ts';
import { toSi, type Unit } from './units.ts';

describe('formatQuantity', () => {
  it.each<[number, Unit, string]>([
    [225, 'lb', '225 lb'],
    [102.5, 'kg', '102.5 kg'],
    [1.25, 'kg', '1.25 kg'],
    [14.25, 'in', '14.25 in'],
    [1.04, 'm', '1.04 m'],
    [104.5, 'cm', '104.5 cm'],
    [350.4, 'N', '350 N'],
    [35.68, 'kgf', '35.7 kgf'],
    [78.66, 'lbf', '78.7 lbf'],
    [-0.001, 'kg', '0 kg'],
    [102.256, 'kg', '102.26 kg'],
    [225.444, 'lb', '225.44 lb'],
    [1.0446, 'm', '1.045 m'],
    [104.46, 'cm', '104.5 cm'],
    [41.4, 'mm', '41 mm'],
    [14.256, 'in', '14.26 in'],
    [5.834, 'ft', '5.83 ft'],
  ])('%s in %s reads "%s"', (value, unit, text) => {
    expect(formatQuantity(toSi(value, unit), unit)).toBe(text);
  });

  it('keeps as many places as are asked for', () => {
    expect(formatQuantity(100, 'kg', 1)).toBe('100.0 kg');
    expect(formatQuantity(-0.0001, 'm', 2)).toBe('0.00 m');
  });
});
