import { expect, test } from 'vitest';
import { sharedPlace } from './sharedPlace.ts';

const at = (...places: string[]) => sharedPlace(places.map((place) => ({ place })));

test('a place is said once only where every set has it', () => {
  expect(at('North hall', 'North hall')).toBe('North hall');
  expect(at('North hall', 'South hall')).toBe('');
  expect(at('North hall', '')).toBe('');
  expect(at()).toBe('');
});
