import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { furtherStop, type Grip, nearestStop } from './Grip.ts';

const grip = (value: number, stops: Grip['stops'], min = 0, max = 300): Grip => ({
  label: 'Bar',
  valueText: '',
  value,
  stops,
  min,
  max,
  onMove: () => {},
});

test('a grip stops on whole steps within its reach', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -500, max: 900, noNaN: true }),
      fc.constantFrom(0.5, 2.5, 0.005),
      (value, step) => {
        const stop = nearestStop(grip(0, step), value);
        expect(stop).toBeGreaterThanOrEqual(0);
        expect(stop).toBeLessThanOrEqual(300);
        expect(Math.abs(stop / step - Math.round(stop / step))).toBeLessThan(1e-6);
        if (value >= 0 && value <= 300) expect(Math.abs(stop - value)).toBeLessThanOrEqual(step / 2 + 1e-6);
      },
    ),
  );
});

test('a key moves to the next step, from between two steps too', () => {
  expect(furtherStop(grip(60, 0.5), 1)).toBe(60.5);
  expect(furtherStop(grip(59.87, 0.5), 1)).toBe(60);
  expect(furtherStop(grip(59.87, 0.5), -1)).toBe(59.5);
  expect(furtherStop(grip(0.365, 0.005), 1)).toBe(0.37);
  expect(furtherStop(grip(299.9, 0.5), 10)).toBe(300);
});

test('a box moves only to heights that the club can build', () => {
  const boxes = [0.33, 0.355, 0.38];
  expect(nearestStop(grip(0.33, boxes), 0.36)).toBe(0.355);
  expect(nearestStop(grip(0.33, boxes), 2)).toBe(0.38);
  expect(furtherStop(grip(0.34, boxes), 1)).toBe(0.355);
  expect(furtherStop(grip(0.34, boxes), -1)).toBe(0.33);
  expect(furtherStop(grip(0.33, boxes), 10)).toBe(0.38);
  expect(furtherStop(grip(0.38, boxes), 1)).toBe(0.38);
});
