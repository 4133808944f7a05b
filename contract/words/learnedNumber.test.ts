import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ParameterName, parameterNames } from '#core/strength/parameters.ts';
import { learnedNumber, learnedText } from './learnedNumber.ts';

const lifts = ['squat', 'bench', 'deadlift'] as const;
const found = (lift: (typeof lifts)[number], name: ParameterName) => {
  const number = learnedNumber(lift, name);
  if (number === null) throw new Error(`${name} of the ${lift} has no words`);
  return number;
};

test('more of a parameter always reads as more, so that the ends of a range keep their order', () => {
  const value = fc.double({ min: -2, max: 2, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...lifts),
      fc.constantFrom(...parameterNames),
      value,
      value,
      (lift, name, a, b) => {
        const number = learnedNumber(lift, name);
        if (number === null || b - a < 1e-6) return;
        expect(number.read(b)).toBeGreaterThan(number.read(a));
      },
    ),
  );
});

test('at nought stands what is usual: no change where it is a change, the published pause where it is a share', () => {
  for (const lift of lifts)
    for (const name of parameterNames) {
      const number = learnedNumber(lift, name);
      if (number?.signed) expect(learnedText(number, number.read(0))).toMatch(/^0(\.0+)?$/);
    }
  // Wilson, Elliott & Wood 1991 (Med Sci Sports Exerc 23:364): half-life 0.85 s, so after one second 2^(-1/0.85) = 0.44.
  expect(found('bench', 'heldRebound').read(0)).toBeCloseTo(44, 6);
});

test('a factor of 1.1 in knee wraps reads as ten per cent more', () => {
  const wraps = found('squat', 'wraps');
  expect(learnedText(wraps, wraps.read(Math.log(1.1)))).toBe('+10');
  expect(learnedText(wraps, wraps.read(Math.log(0.9)))).toBe('−10');
});

test('nothing is written with a sign when it rounds to nothing', () => {
  const offset = found('squat', 'speedOffset');
  expect(learnedText(offset, -0.001)).toBe('0.00');
});
