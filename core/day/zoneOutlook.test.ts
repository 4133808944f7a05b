import { expect, it } from 'vitest';
import { tiringOf } from '#core/effort/Tiring.ts';
import { bareLoad } from '#core/load/bareLoad.ts';
import { simulateRep } from '#core/rep/simulateRep.ts';
import { squatCapability } from '#core/rep/tests/capabilities.ts';
import { chanceInZone } from '#core/strength/chanceInZone.ts';
import type { Aim } from './Aim.ts';
import { zoneOutlook } from './zoneOutlook.ts';

const gear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [] };
const travel = { bottomM: 0.9, lockoutM: 1.5, gravityMps2: 9.80665, path: [] };
const outlook = (barKg: number, aim: Aim) =>
  zoneOutlook(
    { capability: squatCapability, travel, aim, referenceKg: 300 },
    gear,
    { hookups: [], chainPairs: [] },
    barKg,
    0.02,
  );
const zone = { by: 'speed' as const, fromMps: 0.6, toMps: 0.7 };

it('tells the speed of the rep, and the chance to lie in the zone by how it changes with strength', () => {
  const load = { ...bareLoad(0.9, 1.5), barKg: 200 };
  const mpsAt = (ln: number) =>
    simulateRep(load, { ...squatCapability, strengthN: squatCapability.strengthN * Math.exp(ln) })
      .meanSpeedMps;
  const { mps, chance } = outlook(200, zone)!;
  expect(mps).toBeCloseTo(mpsAt(0), 9);
  const perLnMps = (mpsAt(0.01) - mpsAt(-0.01)) / 0.02;
  expect(Math.abs(chance - chanceInZone(zone, { mps, perLnMps }, 0, 0.02))).toBeLessThan(0.002);
  // A last rep is slower than the first.
  const over = { reps: 5, tiring: tiringOf('squat') };
  expect(outlook(200, { ...zone, over })!.mps).toBeLessThan(mps - 0.01);
});

it('gives a bar that does not go up no chance at all, though zones reach down to slow speeds', () => {
  const slow = { ...zone, fromMps: 0.05, toMps: 0.1 };
  expect(outlook(500, slow)).toEqual({ mps: 0, chance: 0 });
  expect(outlook(500, { ...slow, over: { reps: 3, tiring: tiringOf('squat') } })).toEqual({
    mps: 0,
    chance: 0,
  });
});

it('says nothing of an aim that is no speed', () => {
  expect(outlook(100, { by: 'capability', bottomShare: 0.7, lockoutShare: 0.7 })).toBeNull();
});
