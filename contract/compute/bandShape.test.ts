import { expect, it } from 'vitest';
import { fittedOnce, toBandCurves } from './bandShape.ts';

const loopOf = (stiffness: number) => ({
  restLength_m: 0.5,
  readings: [0.6, 0.8, 1].map((length_m) => ({
    length_m,
    force_N: stiffness * (length_m - 0.5),
    direction: 'loading' as const,
  })),
});

it('fits a loop once however often it is listed, and another loop by its own readings', () => {
  const toCurves = fittedOnce();
  const first = toCurves(loopOf(200), 'a');
  expect(toCurves(loopOf(200), 'b')).toBe(first);
  expect(first).toEqual(toBandCurves(loopOf(200), 'a'));
  expect(toCurves(loopOf(400), 'a')).toEqual(toBandCurves(loopOf(400), 'a'));
  expect(toCurves({ ...loopOf(200), restLength_m: 0.55 }, 'a')).not.toEqual(first);
});
