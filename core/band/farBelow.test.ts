import { describe, expect, it } from 'vitest';
import { farBelow } from './farBelow.ts';

const read = (
  takenOn: string,
  lengthM: number,
  forceN: number,
  direction: 'loading' | 'unloading' = 'loading',
) => ({
  takenOn,
  lengthM,
  forceN,
  direction,
});
const before = [read('2026-03-01', 1.5, 200), read('2026-03-01', 2, 300)];

describe('farBelow', () => {
  it('questions pounds of force that were taken for kilograms, and the label of a band half as wide', () => {
    // 0.4536 kg in a pound (NIST SP 811).
    expect(farBelow(read('2026-09-01', 2, 300 * 0.4536), before)?.other).toEqual({
      takenOn: '2026-03-01',
      forceN: 300,
    });
    expect(farBelow(read('2026-09-01', 1.5, 100), before)).not.toBeNull();
  });

  it('leaves alone what a band may lose, and what two readings scatter', () => {
    expect(farBelow(read('2026-09-01', 2, 0.76 * 300), before)).toBeNull();
    // A quarter less is 225 N. One chance in twenty lies beyond 1.645 times sqrt(sd(300)^2 + sd(217)^2) = 6.4 N, which is
    // 10.5 N (tables of the normal distribution; errors of 1.5 % and 2 N).
    expect(farBelow(read('2026-09-01', 2, 216), before)).toBeNull();
    expect(farBelow(read('2026-09-01', 2, 212), before)).not.toBeNull();
  });

  it('reads straight between two lengths of the other day, and says nothing beyond them', () => {
    expect(farBelow(read('2026-09-01', 1.75, 150), before)?.other.forceN).toBeCloseTo(250, 9);
    expect(farBelow(read('2026-09-01', 2.2, 150), before)).toBeNull();
    expect(farBelow(read('2026-09-01', 1.4, 50), before)).toBeNull();
    // A tape cannot tell what is half a millimetre off, and more than that is beyond.
    expect(farBelow(read('2026-09-01', 2.0004, 150), before)?.other.forceN).toBe(300);
    expect(farBelow(read('2026-09-01', 2.0006, 150), before)).toBeNull();
    const twice = [...before, read('2026-03-01', 2, 280)];
    expect(farBelow(read('2026-09-01', 2, 150), twice)?.other.forceN).toBe(290);
  });

  it('goes by the nearest other day: a slow loss is none of one day to the next', () => {
    const years = [read('2020-01-01', 2, 300), read('2023-01-01', 2, 240), read('2026-01-01', 2, 190)];
    expect(farBelow(years[2]!, years)).toBeNull();
    expect(farBelow(years[2]!, [years[0]!])).not.toBeNull();
  });

  it('compares neither with the same day nor with the other direction', () => {
    expect(farBelow(read('2026-03-01', 2, 100), before)).toBeNull();
    expect(farBelow(read('2026-09-01', 2, 100, 'unloading'), before)).toBeNull();
  });
});
