import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import type { RackGear } from './Gear.ts';
import { speaksFor } from './runnersUp.ts';

const set = (hookups: number[], ...chainPairs: number[]) => ({ hookups, chainPairs });
const read = [1.2, 1.5, 1.8, 2.1].map((lengthM) => ({
  lengthM,
  forceN: 200 * (lengthM - lengthM ** -2),
  direction: 'loading' as const,
}));
const hookup = (pairId: string, isRead: boolean) => ({
  pairId,
  hookupId: 'h',
  anchorId: 'a',
  ratedLoadN: null,
  rigged: [
    {
      curves: fitBand({ restLengthM: 1, widthMm: 40, readings: isRead ? read : [] }),
      hookup: { way: 'single' as const },
      anchor: { xM: 0, yM: 0, zM: 0 },
      count: 2,
    },
  ],
  measured: null,
});
/** The pair `a` in two ways, read; `b` and `c` known by their width alone. */
const gear: RackGear = {
  barKg: 20,
  collarsKg: 0,
  discs: [],
  chains: [],
  hookups: [hookup('a', true), hookup('a', true), hookup('b', false), hookup('c', false)],
};
const codes = (one: number[], best: number[], kg = 0) =>
  speaksFor(
    { set: set(one), barKg: 100 + kg, misfit: 0.03 },
    { set: set(best), barKg: 100, misfit: 0.02 },
    gear,
  );

describe('what speaks for it', () => {
  const little = { code: 'nearlyAsGood', misfitMore: expect.closeTo(0.01, 12) };

  it('is always how little worse it is, and what is better about it', () => {
    expect(codes([2], [3])).toEqual([little]);
    expect(codes([2], [3], 5)).toEqual([{ code: 'heavierBar', kg: 5 }, little]);
    expect(codes([2], [3], -5)).toEqual([{ code: 'lighterBar', kg: 5 }, little]);
    expect(codes([2], [0, 3])).toEqual([{ code: 'fewerPieces', pieces: 1 }, little]);
    expect(codes([2, 3], [0])).toEqual([little]);
    expect(codes([1], [0])).toEqual([{ code: 'samePairs' }, little]);
  });

  it('is that all of it was measured only where that is not so of the best', () => {
    expect(codes([0], [2])).toEqual([{ code: 'allMeasured' }, little]);
    expect(codes([0, 2], [1, 3])).toEqual([little]);
  });
});
