import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { curveNames, LETTER_PX, type Place } from './curveNames.ts';

/** Curves that rise to the right ever more slowly, as a band's do: heights a k^(1/2) above the floor. */
const curve = (rise: number, toX: number): Place[] =>
  Array.from({ length: 30 }, (_, i) => {
    const x = 40 + ((toX - 40) * i) / 29;
    return [x, 300 - rise * Math.sqrt(x - 40)];
  });
const rise = fc.double({ min: 8, max: 16, noNaN: true });

test('no name of a curve crosses a curve or another name', () => {
  fc.assert(
    fc.property(rise, rise, rise, rise, (main, comingOff, other, before) => {
      const others = [
        { name: 'band b', places: curve(other, 270) },
        { name: '29 Dec 2024', places: curve(before, 270) },
      ];
      const fitted = [curve(main, 300), curve(comingOff, 300)];
      const curves = [...fitted, ...others.map(({ places }) => places)];
      const boxes = curveNames(fitted, others).map(({ name, x, y }) => {
        return { left: x - LETTER_PX * name.length, right: x, top: y - 11, foot: y + 3 };
      });
      for (const { left, right, top, foot } of boxes)
        for (const [x, y] of curves.flat())
          expect(x >= left && x <= right && y >= top && y <= foot).toBe(false);
      const [a, b] = boxes.toSorted((one, two) => one.top - two.top);
      expect(a!.foot).toBeLessThanOrEqual(b!.top);
    }),
  );
});

test('a curve that ends above the main one has its name above it, one that ends below it under it', () => {
  const main = [curve(12, 300)];
  const [high] = curveNames(main, [{ name: 'b', places: curve(14, 270) }]);
  const [low] = curveNames(main, [{ name: 'b', places: curve(10, 270) }]);
  expect(high!.y).toBeLessThan(curve(14, 270).at(-1)![1]);
  expect(low!.y).toBeGreaterThan(curve(10, 270).at(-1)![1]);
});

test('where nothing was read of the main curve, the other one is named all the same', () => {
  expect(curveNames([], [{ name: 'b', places: curve(10, 270) }])).toHaveLength(1);
});
