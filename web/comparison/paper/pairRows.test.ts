import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawWays } from '#core/comparison/drawWays.ts';
import { pairRows } from './pairRows.ts';

test('everybody who was drawn stands on the paper once, in the column of the own way, pairs side by side', () => {
  fc.assert(
    fc.property(fc.nat(20), fc.nat(5), fc.nat(), (pairCount, aloneCount, seed) => {
      const pairs = Array.from({ length: pairCount }, (_, i) => ({
        lifterIds: [`a${i}`, `b${i}`] as const,
        distance: 0,
      }));
      const alone = Array.from({ length: aloneCount }, (_, i) => `c${i}`);
      const ways = ['early', 'late'];
      const drawn = [...drawWays({ pairs, alone }, seed)].map(([lifterId, way]) => {
        const pair = pairs.findIndex(({ lifterIds }) => lifterIds.some((id) => id === lifterId)) + 1;
        return { lifterId, name: lifterId, way: ways[way]!, pair: pair === 0 ? null : pair };
      });
      const rows = pairRows({ ways, drawn });
      const placed = rows.flatMap(({ byWay }) =>
        byWay.flatMap((one, at) => (one ? [[one, at] as const] : [])),
      );
      expect(placed.map(([one]) => one.lifterId).sort()).toEqual(
        drawn.map(({ lifterId }) => lifterId).sort(),
      );
      for (const [one, at] of placed) expect(one.way).toBe(ways[at]);
      for (const { pair, byWay } of rows)
        if (pair !== null) expect(byWay.map((one) => one?.pair)).toEqual([pair, pair]);
    }),
  );
});
