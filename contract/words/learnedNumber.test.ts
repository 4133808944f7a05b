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

// Starting shapes and what varies, by the tables of docs/model.md ("rep", "effort", "strength"); the rest by the definitions.
test.each<[(typeof lifts)[number], ParameterName, number, string]>([
  ['squat', 'lnMaxSpeed', Math.log(1.1), '3.08'],
  ['squat', 'lnRebound', Math.log(2), '110'],
  ['squat', 'lnTiring', 0, '1.3'],
  ['bench', 'lnTiring', Math.log(2), '3.4'],
  ['squat', 'lnDaySd', Math.log(2), '3.6'],
  ['squat', 'lnWeekSd', Math.log(2), '1.20'],
  // 5^b = 1.2.
  ['squat', 'tiringBend', Math.log(1.2) / Math.log(5), '+20'],
  ['squat', 'slope', Math.log(1.1), '+10'],
  ['squat', 'bandError', Math.log(0.9), '−10'],
  ['bench', 'startError', Math.log(1.1), '+10'],
  ['bench', 'platform', Math.log(1.01), '+1.0'],
  ['squat', 'speedOffset', 0.05, '+0.05'],
  // At ln 1.5 = 0.4 to spare.
  ['squat', 'speedSlope', 0.25, '+0.10'],
  // 0.1 % a week, 4.35 weeks a month.
  ['squat', 'weekGain', 0.001, '+0.4'],
  ['squat', 'weekGain', 0.01, '+4.4'],
  ['bench', 'heldRebound', Math.log(9), '88'],
])('%s %s %d reads %s', (lift, name, value, text) => {
  const number = found(lift, name);
  expect(learnedText(number, number.read(value))).toBe(text);
  expect(number.title).toMatch(/^[A-Z].* .*/);
  expect(number.meaning).toMatch(/^[A-Z].*\.$/);
});

test('gear is called by its name, and a deadlift has no bounce', () => {
  const titles = (['wraps', 'singlePly', 'multiPly', 'otherGear'] as const).map(
    (name) => found('squat', name).title,
  );
  expect(titles.join()).toMatch(/wraps.*Single-ply.*Multi-ply.*Other/);
  expect(found('squat', 'heldRebound').title).toContain('off the box');
  expect(found('bench', 'heldRebound').title).toContain('after the pause');
  expect([learnedNumber('deadlift', 'lnRebound'), learnedNumber('deadlift', 'heldRebound')]).toEqual([
    null,
    null,
  ]);
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
