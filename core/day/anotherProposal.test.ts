import { describe, expect, it } from 'vitest';
import { anotherProposal, isAnotherSet } from './anotherProposal.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { readPair } from './tests/manyPieces.ts';

const set = (hookups: number[], ...chainPairs: number[]): GearSet => ({ hookups, chainPairs });
const setup = (barKg: number, ...hookups: number[]) => ({ set: set(hookups), barKg, misfit: 0.02 });

describe('another set', () => {
  it('is neither the same with something added nor with something left out, but for the bare bar', () => {
    expect(isAnotherSet(set([0], 0), set([0, 2], 0))).toBe(false);
    expect(isAnotherSet(set([0, 2], 0), set([0], 0))).toBe(false);
    expect(isAnotherSet(set([0], 0), set([0], 1))).toBe(false);
    expect(isAnotherSet(set([0], 1), set([0, 2], 0))).toBe(true);
    expect(isAnotherSet(set([], 0), set([0], 0))).toBe(true);
    expect(isAnotherSet(set([0], 0), set([1], 0))).toBe(true);
  });
});

describe('another proposal', () => {
  const STEP_KG = 2.5;
  const G = 10;
  const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: G, path: [] };
  /** Pairs that pull alike all the way, so that the mean square of a difference is its square. */
  const gearOf = (pullsKg: number[]): RackGear => ({
    barKg: 20,
    collarsKg: 0,
    discs: [{ massKg: STEP_KG / 2, pairs: 80 }],
    chains: [],
    hookups: pullsKg.map((kg, i) =>
      readPair(`p${i}`, { zM: 0.5, forceN: kg * G }, { zM: 1, forceN: kg * G }),
    ),
  });
  /** What nobody feels of 200 kg: 0.018 of it by the form of the day, and half a step of the bar, in squares (docs/model.md). */
  const FELT_KG = Math.hypot(0.018 * 200, STEP_KG / 2);

  it('is no twin: a pair in place of another counts from a difference that can be felt', () => {
    for (const [apartKg, counts] of [
      [0, false],
      [0.98 * FELT_KG, false],
      [-0.98 * FELT_KG, false],
      [1.02 * FELT_KG, true],
      [-1.02 * FELT_KG, true],
    ] as const) {
      const isAnother = anotherProposal(travel, gearOf([50, 50 + apartKg]));
      expect(isAnother(setup(150, 1), setup(150, 0))).toBe(counts);
      // What the bar takes up is not felt either.
      expect(isAnother(setup(150 - apartKg, 1), setup(150, 0))).toBe(false);
    }
  });

  it('is one with less to hang for the same load, and none with more', () => {
    const isAnother = anotherProposal(travel, gearOf([50, 30, 20]));
    expect(isAnother(setup(150, 0), setup(150, 1, 2))).toBe(true);
    expect(isAnother(setup(150, 1, 2), setup(150, 0))).toBe(false);
    expect(isAnother(setup(160, 1, 2), setup(150, 0))).toBe(true);
    // With something added, or left out, it is the same proposal, however much that is felt.
    expect(isAnother(setup(150, 0, 1), setup(150, 0))).toBe(false);
    expect(isAnother(setup(150, 0), setup(150, 0, 1))).toBe(false);
  });
});
