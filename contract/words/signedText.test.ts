import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { signedText } from './signedText.ts';

it('writes a true minus, and a plus where it is asked for', () => {
  expect(signedText(-0.3, { decimals: 1 })).toBe('−0.3');
  expect(signedText(0.3, { decimals: 1 })).toBe('0.3');
  expect(signedText(0.3, { decimals: 1, plus: true })).toBe('+0.3');
  expect(signedText(-2.5)).toBe('−2.5');
});

it('gives no sign to what is written as nought', () => {
  for (const value of [0, -0, 0.04, -0.04])
    expect(signedText(value, { decimals: 1, plus: true })).toBe('0.0');
});

it('reads back as the number it was, to the decimals that were asked for, and never with a hyphen', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.boolean(), (value, plus) => {
      const text = signedText(value, { decimals: 2, plus });
      expect(text).not.toContain('-');
      expect(Math.abs(Number(text.replace('−', '-')) - value)).toBeLessThan(0.00501);
    }),
  );
});
