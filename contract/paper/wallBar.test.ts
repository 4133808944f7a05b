import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { trueBarWords, wallBarKg, writtenBar } from './wallBar.ts';

const disc = (faceMassKg: number, count: number, massKg = faceMassKg) => ({ faceMassKg, count, massKg });

/** A weighed bar and collars of 30.08 kg with two discs of 20 that weigh 19.96, and a five, on each side. */
const odd = { barKg: 25.08 + 5 + 2 * (2 * 19.96 + 5), perSide: [disc(20, 2, 19.96), disc(5, 1)] };

test('a bar that weighed iron makes odd is called what its faces and its bar are called, with the true mass beside it', () => {
  // 25 kg bar, 5 kg of collars, 45 kg a side: 120; it weighs 119.92.
  expect(writtenBar(odd, 0.5, 'kg')).toEqual({ bar: '120', trueBar: '119.9' });
  expect(trueBarWords(writtenBar(odd, 0.5, 'kg'), 'measured', 'kg')).toBe('119.9 kg weighed');
  expect(trueBarWords(writtenBar(odd, 0.5, 'kg'), 'assumed', 'kg')).toBe('counts as 119.9 kg');
});

test('without a step the mass itself is written, and nothing beside it', () => {
  expect(writtenBar(odd, null, 'kg')).toEqual({ bar: '119.9', trueBar: '' });
  expect(trueBarWords(writtenBar(odd, null, 'kg'), 'measured', 'kg')).toBe('');
});

test('in pounds a bar of 45 lb with two plates of 45 lb a side is 225 lb', () => {
  const lb = 0.45359237;
  const bar = { barKg: 20.41 + 4 * 45.2 * lb, perSide: [disc(45 * lb, 2, 45.2 * lb)] };
  expect(writtenBar(bar, 5 * lb, 'lb')).toEqual({ bar: '225', trueBar: '225.8' });
});

const arbitrary = fc.record({
  emptyKg: fc.double({ min: 5, max: 40, noNaN: true }),
  stepKg: fc.double({ min: 0.1, max: 5, noNaN: true }),
  perSide: fc.array(
    fc
      .tuple(
        fc.constantFrom(0.5, 1.25, 2.5, 5, 10, 15, 20, 25),
        fc.integer({ min: 1, max: 5 }),
        fc.double({ min: 0.97, max: 1.03, noNaN: true }),
      )
      .map(([face, count, share]) => disc(face, count, face * share)),
    { maxLength: 6 },
  ),
});
const loaded = ({ emptyKg, perSide }: { emptyKg: number; perSide: ReturnType<typeof disc>[] }) => ({
  barKg: emptyKg + 2 * perSide.reduce((sum, one) => sum + one.count * one.massKg, 0),
  perSide,
});

test('no disc hides in the rounding: one more a side adds twice what stands on it', () => {
  fc.assert(
    fc.property(arbitrary, fc.constantFrom(0.25, 0.5, 1.25), (bar, face) => {
      const more = { ...bar, perSide: [...bar.perSide, disc(face, 1, face * 1.02)] };
      const added = wallBarKg(loaded(more), bar.stepKg) - wallBarKg(loaded(bar), bar.stepKg);
      expect(added).toBeCloseTo(2 * face, 6);
    }),
  );
});

test('the figure is off the true mass by no more than half a step and what the discs are off their faces', () => {
  fc.assert(
    fc.property(arbitrary, (bar) => {
      const whole = loaded(bar);
      const offFacesKg =
        2 * bar.perSide.reduce((sum, one) => sum + one.count * Math.abs(one.massKg - one.faceMassKg), 0);
      expect(Math.abs(wallBarKg(whole, bar.stepKg) - whole.barKg)).toBeLessThanOrEqual(
        bar.stepKg / 2 + offFacesKg + 1e-9,
      );
    }),
  );
});
