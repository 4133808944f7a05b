import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fullRange, parallelBox } from './fullRange.ts';
import { type HeightRange, type Start, startHeights } from './startHeights.ts';

const range = fc
  .record({
    bottomM: fc.double({ min: 0.2, max: 1.2, noNaN: true }),
    moveM: fc.double({ min: 0.2, max: 1, noNaN: true }),
  })
  .map(({ bottomM, moveM }): HeightRange => ({ bottomM, lockoutM: bottomM + moveM }));
const start: fc.Arbitrary<Start> = fc.oneof(
  fc.record({ way: fc.constantFrom('free' as const, 'paused' as const) }),
  fc.record({
    way: fc.constantFrom('box' as const, 'boards' as const, 'blocks' as const, 'deficit' as const),
    heightM: fc.double({ min: 0, max: 0.6, noNaN: true }),
  }),
);
const boxM = fc.double({ min: 0.2, max: 0.5, noNaN: true });

it('the full range behind the heights of any start but pins is the one that they came from', () => {
  fc.assert(
    fc.property(range, range, start, boxM, (full, guess, from, parallelM) => {
      const back = fullRange(from, startHeights(full, from, parallelM), guess, parallelM);
      expect(back.bottomM).toBeCloseTo(full.bottomM, 9);
      expect(back.lockoutM).toBeCloseTo(full.lockoutM, 9);
    }),
  );
});

it('pins say only that the free bottom lies no higher than they are', () => {
  fc.assert(
    fc.property(range, range, (measured, guess) => {
      const back = fullRange({ way: 'pins', heightM: measured.bottomM }, measured, guess, 0.35);
      expect(back).toEqual({
        bottomM: Math.min(measured.bottomM, guess.bottomM),
        lockoutM: measured.lockoutM,
      });
    }),
  );
});

it('the box at the free bottom is found from where the bar was on any other', () => {
  fc.assert(
    fc.property(range, boxM, boxM, (full, parallelM, otherM) => {
      const { bottomM } = startHeights(full, { way: 'box', heightM: otherM }, parallelM);
      expect(parallelBox(otherM, bottomM, full.bottomM)).toBeCloseTo(parallelM, 9);
    }),
  );
});
