import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxHeights, nearestBox } from './boxHeights.ts';

const piece = (label: string, sort: 'box' | 'mat', heightM: number, pieces: number) => ({
  id: label,
  label,
  sort,
  heightM,
  pieces,
  note: '',
});

test('heights are sums of one box and at most three mats of those there are', () => {
  const gear = [
    piece('Box 30', 'box', 0.3, 1),
    piece('Mat 2', 'mat', 0.02, 2),
    piece('Mat 3', 'mat', 0.03, 1),
  ];
  // By hand: 30 with 0, 1 or 2 of the 2s, each with or without the 3: no more than three mats.
  expect(boxHeights(gear).map((box) => box.heightM)).toEqual([0.3, 0.32, 0.33, 0.34, 0.35, 0.37]);
});

test('of two ways to one height the one with fewer pieces is named', () => {
  const gear = [
    piece('Box 30', 'box', 0.3, 1),
    piece('Box 33', 'box', 0.33, 1),
    piece('Mat 3', 'mat', 0.03, 4),
    piece('Broken', 'box', 0.36, 0),
  ];
  expect(boxHeights(gear).find((box) => box.heightM === 0.33)?.words).toEqual(['Box 33']);
  expect(boxHeights(gear).find((box) => box.heightM === 0.36)?.words).toEqual(['Box 33', 'Mat 3']);
});

test('no box that can be built is nearer than the nearest, and of two that are as near it is the higher', () => {
  const heights = fc.array(fc.integer({ min: 200, max: 600 }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(heights, fc.integer({ min: 100, max: 700 }), (mm, wantedMm) => {
      const built = boxHeights(mm.map((each, at) => piece(`Box ${at}`, 'box', each / 1000, 1)));
      const found = Math.round(1000 * nearestBox(built, wantedMm / 1000)!.heightM);
      const best = Math.min(...mm.map((each) => Math.abs(each - wantedMm)));
      expect(found).toBe(Math.max(...mm.filter((each) => Math.abs(each - wantedMm) === best)));
    }),
  );
  expect(nearestBox([], 0.36)).toBeUndefined();
});
