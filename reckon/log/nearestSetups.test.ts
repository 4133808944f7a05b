import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { KeyedSetup } from '#contract/log/setupKey.ts';
import { nearestSetups, setupDistance } from './nearestSetups.ts';

const band = (bandPairId: string) => ({ bandPairId, hookupId: 'low' });
const squat = (heightM: number | null, bands: string[] = []): KeyedSetup => ({
  lift: 'squat',
  equipment: 'raw',
  setup: {
    start: { way: heightM === null ? 'free' : 'box', heightM },
    bands: bands.map(band),
    chains: [],
  },
});
const any = fc
  .tuple(fc.constantFrom(null, 0.3, 0.36, 0.4), fc.array(fc.constantFrom('a', 'b', 'c'), { maxLength: 4 }))
  .map(([heightM, bands]) => squat(heightM, bands));

test('the next box is nearer than the same box with another band, and that nearer than no box', () => {
  const one = squat(0.36, ['a']);
  const nearest = nearestSetups(one, [squat(null, ['a']), squat(0.36, ['b']), squat(0.38, ['a']), one], 3);
  expect(nearest).toEqual([squat(0.38, ['a']), squat(0.36, ['b']), squat(null, ['a'])]);
});

test('distance is nought to itself, the same both ways and never shorter by a detour', () => {
  fc.assert(
    fc.property(any, any, any, (a, b, c) => {
      expect(setupDistance(a, a)).toBe(0);
      expect(setupDistance(a, b)).toBe(setupDistance(b, a));
      expect(setupDistance(a, c)).toBeLessThanOrEqual(setupDistance(a, b) + setupDistance(b, c) + 1e-9);
    }),
  );
});

test('setups of another lift are never near', () => {
  expect(nearestSetups(squat(0.36), [{ ...squat(0.36), lift: 'deadlift' }], 3)).toEqual([]);
});
