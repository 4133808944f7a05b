import { fitBand } from '#core/band/fitBand.ts';
import type { PairHookup, RackGear } from '../Gear.ts';

/** A pair of which nobody knows how it pulls, for what only counts or shares pairs out. */
export function anyPair(pairId: string, hookupId = 'h'): PairHookup {
  return { pairId, hookupId, anchorId: 'a', ratedLoadN: null, rigged: [], measured: null };
}

/** One pair that pulls straight between two heights, as a scale reads it: of no matter how it is rigged. */
export function readPair(
  pairId: string,
  from: { zM: number; forceN: number },
  to: { zM: number; forceN: number },
  hookupId = 'h',
): PairHookup {
  return { ...anyPair(pairId, hookupId), measured: { count: 1, verticalAt: [from, to] } };
}

/** A pair of loops of 0.5 m, neo-Hookean of 200 N, hung single from a peg at this height, right below or above the bar's sleeves. */
export function loopsOnPeg(zM: number): PairHookup {
  const readings = [1.2, 1.5, 1.8, 2.1].map((x) => ({
    lengthM: 0.5 * x,
    forceN: 200 * (x - x ** -2),
    direction: 'loading' as const,
  }));
  const curves = fitBand({ restLengthM: 0.5, readings });
  const rigged = [{ curves, hookup: { way: 'single' as const }, anchor: { xM: 0, yM: 0, zM }, count: 2 }];
  return { ...anyPair('p'), rigged };
}

/** A rack with so many pairs, each stronger than the one before, and so many kinds of chain. Invented. */
export function manyPieces(pairCount: number, chainKinds: number): RackGear {
  return {
    barKg: 20,
    collarsKg: 0,
    discs: [20, 10, 5, 2.5].map((massKg) => ({ massKg, pairs: 4 })),
    hookups: Array.from({ length: pairCount }, (_, pair) =>
      readPair(`p${pair}`, { zM: 0.6, forceN: 0 }, { zM: 1.1, forceN: 60 + 22 * pair }),
    ),
    chains: Array.from({ length: chainKinds }, (_, kind) => ({
      chainPairId: `c${kind}`,
      pairs: 10,
      chain: { massPerMetreKg: 3 + 2 * kind, lengthM: 0.8 + 0.1 * kind, attachBelowBarM: 0.1, count: 2 },
    })),
  };
}
