import { expect, test } from 'vitest';
import { allowedInstead, wrongQuantity } from './wrongQuantity.ts';

const stature = { label: 'Stature', unit: 'cm', minSi: 1, maxSi: 2.5 } as const;

test('a value in another unit is taken where it is allowed', () => {
  // 6 ft 5 in = 1.9558 m by the exact inch of NIST SP 811.
  for (const text of ['195', '1.95 m', '77 in', `6'5"`]) expect(wrongQuantity(text, stature)).toBeNull();
});

test('a value outside is named with what is allowed, in the unit of the field', () => {
  expect(wrongQuantity('3 m', stature)).toBe('Stature is 300 cm; allowed is 100 cm to 250 cm.');
  expect(wrongQuantity('10', { label: 'Pull', unit: 'kgf', minSi: 980.665 })).toBe(
    'Pull is 10 kg; allowed is 100 kg or more.',
  );
});

test('the limits themselves are allowed', () => {
  expect(wrongQuantity('100', stature)).toBeNull();
  expect(wrongQuantity('250', stature)).toBeNull();
});

test('an empty field is wrong only where it is needed', () => {
  expect(wrongQuantity('  ', stature)).toBeNull();
  expect(wrongQuantity('  ', { ...stature, required: true })).toBe('Stature is needed.');
});

test('a mass in a field for a length is refused', () => {
  expect(wrongQuantity('80 kg', stature)).toMatch(/mass where a length is asked for/);
});

test('outside of what is allowed, what the number is in another unit is offered, and nothing where that is outside too', () => {
  expect(allowedInstead('1.80', stature)).toEqual([{ word: 'Metres? 180 cm', valueSi: 1.8 }]);
  expect(allowedInstead('180', stature)).toEqual([]);
  expect(allowedInstead('0.2', stature)).toEqual([]);
  expect(allowedInstead('tall', stature)).toEqual([]);
});
