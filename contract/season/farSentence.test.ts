import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { farSentence, massRange } from './farSentence.ts';

const of = {
  lift: 'squat',
  start: { way: 'free', heightM: null },
  aim: { by: 'percent', targets: [{ basis: 'lockout', share: 0.75 }] },
  lockoutShare: 0.75,
  meanShare: 0.65,
  bandShare: 0.25,
} satisfies Parameters<typeof farSentence>[0];
const held = { bottom: { lowKg: 150, highKg: 170 }, lockout: { lowKg: 210, highKg: 240 } };
const weeks = [{ monday: '2027-01-04', lowKg: 128, highKg: 145, held }];
const noShares = { lockoutShare: null, meanShare: null, bandShare: null };
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
  const bySpeed = { ...of, ...noShares, aim: { by: 'speed', fromMps: 0.6, toMps: 0.8 } } as const;
  expect(farSentence(bySpeed, '2027-01-04', { lifts }, 'kg')).toMatch(/how fast .* once the day is near\.$/);
});

test('shares of strength are ranges at both ends; of a start that stops short of the full range lockout alone is told', () => {
  const aim = { by: 'capability', bottomShare: 0.6, lockoutShare: 0.7 } as const;
  const shares = { ...of, ...noShares, aim };
  // 0.6 x 150 = 90 and 0.6 x 170 = 102; 0.7 x 210 = 147 and 0.7 x 240 = 168.
  expect(farSentence(shares, '2027-01-04', { lifts }, 'kg')).toBe(
    'About 90 to 105 kg at the bottom and 145 to 170 kg at lockout, by how strong this lifter may be then.',
  );
  const box = { ...shares, start: { way: 'box', heightM: 0.4 } } as const;
  expect(farSentence(box, '2027-01-04', { lifts }, 'kg')).toMatch(/^About 145 to 170 kg at lockout, by/);
  const unknown = [{ lift: 'squat' as const, weeks: [{ ...weeks[0]!, held: null }] }];
  expect(farSentence(shares, '2027-01-04', { lifts: unknown }, 'kg')).toMatch(/heights are not known\.$/);
});
