import { describe, expect, it } from 'vitest';
import { handlingWeight, rotationChanges } from './handling.ts';
import { setChanges } from './setChanges.ts';

const set = (hookups: number[], ...chainPairs: number[]) => ({ hookups, chainPairs });

describe('a minute of band changes', () => {
  it('is worth nothing at the one end of the slide, a point of misfit in the middle, and a hundred times that at the other', () => {
    // 0.01 pull / (1 - pull), the pull up to 0.99 below the line (docs/model.md, "day").
    expect(handlingWeight(0)).toBe(0);
    expect(handlingWeight(0.5)).toBeCloseTo(0.01, 12);
    expect(handlingWeight(0.9)).toBeCloseTo(0.09, 12);
    expect(handlingWeight(1)).toBeCloseTo(1, 12);
  });
});

describe('changes', () => {
  it('count every pair put on and every one taken off, bands and chains', () => {
    expect(setChanges(set([0, 1], 0), set([1, 2], 2))).toBe(1 + 1 + 2);
    expect(setChanges(set([0], 1), set([], 0))).toBe(2);
  });

  it('go all round, back to the lifter who began', () => {
    expect(rotationChanges([set([0]), set([0, 1]), set([]), set([2])])).toBe(1 + 2 + 1 + 2);
    expect(rotationChanges([set([0])])).toBe(0);
  });
});
