import { type Arbitrary, assert, constantFrom, double, oneof, property, record } from 'fast-check';
import { expect, it } from 'vitest';
import { fullRange, parallelBox } from './fullRange.ts';
import { type HeightRange, type Start, startHeights } from './startHeights.ts';

const range = record({
  bottomM: double({ min: 0.2, max: 1.2, noNaN: true }),
  moveM: double({ min: 0.2, max: 1, noNaN: true }),
}).map(({ bottomM, moveM }): HeightRange => ({ bottomM, lockoutM: bottomM + moveM }));
const start: Arbitrary<Start> = oneof(
  record({ way: constantFrom('free' as const, 'paused' as const) }),
  record({
    way: constantFrom('box' as const, 'boards' as const, 'blocks' as const, 'deficit' as const),
    heightM: double({ min: 0, max: 0.6, noNaN: true }),
  }),
);
const boxM = double({ min: 0.2, max: 0.5, noNaN: true });

it('the full range behind the heights of any start but pins is the one that they came from', () => {
  assert(
    property(range, range, start, boxM, (full, guess, from, parallelM) => {
      const back = fullRange(from, startHeights(full, from, parallelM), guess, parallelM);
      expect(back.bottomM).toBeCloseTo(full.bottomM, 9);
      expect(back.lockoutM).toBeCloseTo(full.lockoutM, 9);
    }),
  );
});

it('pins say only that the free bottom lies no higher than they are', () => {
  assert(
    property(range, range, (measured, guess) => {
      const back = fullRange({ way: 'pins', heightM: measured.bottomM }, measured, guess, 0.35);
      expect(back).toEqual({
        bottomM: Math.min(measured.bottomM, guess.bottomM),
        lockoutM: measured.lockoutM,
      });
    }),
  );
});

it('the box at the free bottom is found from where the bar was on any other', () => {
  assert(
    property(range, boxM, boxM, (full, parallelM, otherM) => {
      const { bottomM } = startHeights(full, { way: 'box', heightM: otherM }, parallelM);
      expect(parallelBox(otherM, bottomM, full.bottomM)).toBeCloseTo(parallelM, 9);
    }),
  );
});
