import { expect, it } from 'vitest';
import { goneBy } from './goneBy.ts';

const mass = (kg: number) => `${kg} kg`;
const place = (belowShare: number, loweredFromKg: number | null) => ({
  strength: { known: 'estimated' as const, sdLn: 0.1, belowShare, setCount: 4, maxKg: null, lifter: null },
  reference: { kg: 190, from: 'log' as const, loweredFromKg, doneOn: null, equipment: 'raw' as const },
});
const shares = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.4 };
const bar = { by: 'percent' as const, targets: [{ basis: 'bar' as const, share: 0.5 }] };
const zone = { by: 'speed' as const, fromMps: 0.6, toMps: 0.7, of: 'firstRep' as const };

it('tells beside other proposals what strength or maximum they go by, where it was lowered', () => {
  // A tenth less: 72 of 80 % and 36 of 40 %.
  expect(goneBy(shares, place(0.1, null), mass)).toMatch(
    /72 % of strength at the bottom.*36 % at lockout.*10 % less/,
  );
  expect(goneBy(bar, place(0.1, 210), mass)).toMatch(/190 kg.*210 kg/);
});

it('is silent where nothing was lowered: strength that is sure, a best that stands, a speed zone', () => {
  expect(goneBy(shares, place(0.004, null), mass)).toBeNull();
  expect(goneBy(bar, place(0.1, null), mass)).toBeNull();
  expect(goneBy(zone, place(0.1, 210), mass)).toBeNull();
});
