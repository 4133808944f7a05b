import { expect, it } from 'vitest';
import { hopeFor, liftersNeeded, outlookOf } from './usualGain.ts';

it("a usual gain is the published one, 0.2 % a week, or the club's own where that is more", () => {
  const published = { wholeGainLn: expect.closeTo(0.024, 12), known: 'published' };
  expect(hopeFor(12, null)).toEqual(published);
  expect(hopeFor(12, 0.001)).toEqual(published);
  expect(hopeFor(12, 0.005)).toEqual({ wholeGainLn: expect.closeTo(0.06, 12), known: 'club' });
});

it('more than all of it cannot be seen, more than half of it would be very great', () => {
  const hope = { wholeGainLn: 0.024, known: 'published' } as const;
  expect([null, 0.0241, 0.0239, 0.0121, 0.0119].map((detectable) => outlookOf(detectable, hope))).toEqual([
    'cannotBeSeen',
    'cannotBeSeen',
    'onlyGreat',
    'onlyGreat',
    'canBeSeen',
  ]);
});

it('a difference half as large takes four times the lifters, an even number of them', () => {
  const hope = { wholeGainLn: 0.024, known: 'published' } as const;
  expect(liftersNeeded(8, 0.012, hope)).toBe(8);
  expect(liftersNeeded(8, 0.024, hope)).toBe(32);
  expect(liftersNeeded(9, 0.012, hope)).toBe(10);
});
