import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { farSentence, massRange } from './farSentence.ts';

const of = { lift: 'squat', lockoutShare: 0.75, meanShare: 0.65, bandShare: 0.25 } as const;
const weeks = [{ monday: '2027-01-04', lowKg: 128, highKg: 145 }];
const lifts = [{ lift: 'squat' as const, weeks }];

test('a far week is a range that holds the whole of its shares, in steps, and never one figure', () => {
  // 0.75 x 128 = 96 and 0.75 x 145 = 108.75; a quarter of them 32 and 36.25.
  expect(farSentence(of, '2027-01-04', { lifts }, 'kg')).toBe(
    'About 95 to 110 kg at lockout, of it 30 to 40 kg in bands, by how strong this lifter may be then.',
  );
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 500, noNaN: true }),
      fc.double({ min: 0, max: 200, noNaN: true }),
      fc.double({ min: 0.05, max: 2, noNaN: true }),
      (lowKg, wide, share) => {
        const text = massRange({ lowKg, highKg: lowKg + wide }, share, 'kg');
        const [low, high] = text.match(/\d+/g)!.map(Number) as [number, number];
        expect(low).toBeLessThanOrEqual(share * lowKg);
        expect(high).toBeGreaterThanOrEqual(share * (lowKg + wide));
        expect(high).toBeGreaterThan(low);
        expect(high - low).toBeLessThanOrEqual(share * wide + 10);
      },
    ),
  );
});

test('where nothing can be said of a far week, it says why', () => {
  const nothing = farSentence(of, '2027-01-04', { lifts: [] }, 'kg');
  expect(nothing).toMatch(/^Nothing is known of the squat of this lifter/);
  expect(farSentence(of, '2028-01-03', { lifts }, 'lb')).toMatch(/^More than a year ahead .* in lb\.$/);
  const bySpeed = { ...of, lockoutShare: null, meanShare: null, bandShare: null };
  expect(farSentence(bySpeed, '2027-01-04', { lifts }, 'kg')).toMatch(/appears once the day is near\.$/);
});
