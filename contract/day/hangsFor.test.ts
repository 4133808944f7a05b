import { expect, test } from 'vitest';
import { hangsFor } from './hangsFor.ts';

const seat = (lifterId: string, bands: string[], chains: string[] = []) => ({
  lifterId,
  solved: {
    set: {
      bands: bands.map((bandPairId) => ({ bandPairId })),
      chains: chains.map((chainPairId) => ({ chainPairId })),
    },
  },
});

test('a pair hangs for everybody whose bar has it in any group, each named once; nobody without loads counts', () => {
  const plan = {
    groups: [
      { places: [seat('ida', ['22', '29']), seat('ben', ['29']), { lifterId: 'una', solved: null }] },
      { places: [seat('ida', ['22']), seat('eve', [], ['22'])] },
    ],
  } as never;
  expect(hangsFor(plan, '22')).toEqual(['ida', 'eve']);
  expect(hangsFor(plan, '29')).toEqual(['ida', 'ben']);
  expect(hangsFor(plan, '45')).toEqual([]);
});
