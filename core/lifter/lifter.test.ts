import { describe, expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { estimateHeights, estimateParallelBox } from './estimateHeights.ts';
import { lifterCapability, shapeFrom } from './lifterCapability.ts';
import { type PopulationShape, populationShape } from './populationShape.ts';
import { startHeights } from './startHeights.ts';

describe('heights from stature', () => {
  // Worked by hand for 2.00 m from the segment ratios of Drillis & Contini 1966 (shoulder 0.818, hip 0.530, knee 0.285,
  // wrist 0.485, fingertip 0.377, arm to wrist 0.332, shoulder width 0.259), with the postures of docs/model.md, "lifter".
  it('of a squat: the trunk leans 10 degrees standing and 45 at parallel', () => {
    // Lockout: 0.808 x 2 - 0.576 (1 - cos 10) = 1.6160 - 0.0088; down by 0.245 x 2 and 0.576 (cos 10 - cos 45) = 0.1600.
    const { bottomM, lockoutM } = estimateHeights('squat', 2);
    expect(lockoutM).toBeCloseTo(1.6072, 4);
    expect(bottomM).toBeCloseTo(0.9573, 4);
  });

  it('of a bench press: from the chest to arms that slant to the marks 81 cm apart', () => {
    // Chest 0.290 on a pad of 0.43. The hands are (0.81 - 0.518) / 2 = 0.146 wide of the shoulders: sqrt(0.664^2 - 0.146^2)
    // = 0.6477 of arm, from a joint 0.10 above the pad. Rule books: pad 0.42 to 0.45 m, marks 0.81 m.
    const { bottomM, lockoutM } = estimateHeights('bench', 2);
    expect(bottomM).toBeCloseTo(0.72, 4);
    expect(lockoutM).toBeCloseTo(1.1777, 4);
    expect(estimateHeights('bench', 2, 0.45).lockoutM).toBeCloseTo(1.1977, 4);
  });

  it('of a deadlift: from discs of 450 mm to the middle of the hand', () => {
    // (0.485 + 0.377) / 2 x 2 m
    expect(estimateHeights('deadlift', 2)).toMatchObject({
      bottomM: 0.225,
      lockoutM: expect.closeTo(0.862, 9),
    });
  });

  it('spread by 3 and 5 cm at 2 m, but for the floor, which is where it is', () => {
    for (const lift of ['squat', 'bench'] as const) {
      expect(estimateHeights(lift, 2)).toMatchObject({ lockoutSdM: 0.03, bottomSdM: 0.05 });
    }
    expect(estimateHeights('deadlift', 2)).toMatchObject({ lockoutSdM: 0.03, bottomSdM: 0 });
  });

  it('of a parallel box: knee height with the knees out, less the flesh one sits on', () => {
    // 0.285 x 0.94 x 2 - 0.10
    expect(estimateParallelBox(2).heightM).toBeCloseTo(0.4358, 9);
    expect(estimateParallelBox(2).sdM).toBeCloseTo(0.05, 9);
  });

  it('moves the range with the lifter who stands on a deficit, and not with one on a box', () => {
    const free = { bottomM: 0.9, lockoutM: 1.5 };
    const deficit = startHeights(free, { way: 'deficit', heightM: 0.05 }, 0.4);
    expect(deficit).toEqual({
      bottomM: 0.9,
      lockoutM: 1.55,
      range: { fromM: expect.closeTo(0.95, 12), toM: 1.55 },
    });
    const from = (way: 'boards' | 'blocks' | 'pins' | 'paused') =>
      startHeights(free, { way, heightM: 0.05 }, 0.4);
    for (const way of ['boards', 'blocks'] as const)
      expect(from(way)).toMatchObject({
        bottomM: expect.closeTo(0.95, 12),
        lockoutM: 1.5,
        range: { fromM: 0.9 },
      });
    expect(from('pins')).toMatchObject({ bottomM: 0.05, lockoutM: 1.5, range: { fromM: 0.9, toM: 1.5 } });
    expect(from('paused')).toMatchObject({ bottomM: 0.9, lockoutM: 1.5, range: { fromM: 0.9, toM: 1.5 } });
    const box = startHeights(free, { way: 'box', heightM: 0.45 }, 0.4);
    expect(box).toEqual({
      bottomM: expect.closeTo(0.95, 12),
      lockoutM: 1.5,
      range: { fromM: 0.9, toM: 1.5 },
    });
  });
});

describe('what is left of the stretch after each start', () => {
  const free: PopulationShape = { ...populationShape('squat'), rebound: 1, builtShare: 1 };
  const leftAfter = (start: Parameters<typeof shapeFrom>[1]) => shapeFrom(free, start);

  it('is halved in 0.85 s on the chest, a second being a pause', () => {
    // Wilson, Elliott & Wood 1991, Med Sci Sports Exerc 23:364: half-life 0.85 s; 0.5^(1 / 0.85) = 0.442.
    for (const start of ['paused', 'boards'] as const) {
      expect(leftAfter(start).rebound).toBeCloseTo(0.5 ** (1 / 0.85), 2);
      expect(leftAfter(start).builtShare).toBeCloseTo(0.5 ** (1 / 0.85), 2);
    }
  });

  it('is nothing from pins, blocks and the floor, and a tenth from a box', () => {
    for (const start of ['pins', 'blocks', 'deficit'] as const) {
      expect(leftAfter(start)).toMatchObject({ rebound: 0, builtShare: 0 });
    }
    // One tenth is three and a third half-lives of 0.85 s, a sit of 2.8 s (assumption: lifters differ widely).
    expect(leftAfter('box').rebound).toBeCloseTo(0.1, 9);
    expect(leftAfter('box').builtShare).toBeCloseTo(0.1, 9);
  });
});

describe('a strength that rests on one best', () => {
  const today = { start: 'free' as const, range: { fromM: 0.9, toM: 1.5 }, bodyMassKg: 90 };
  const load = { ...bareLoad(0.9, 1.5), barKg: 200 };
  const after = (yearsAgo: number) =>
    lifterCapability('squat', today, { ...today, load, yearsAgo }).strengthSdLn;

  it('is known to the 2 to 4 % to which a maximum repeats, the middle of them', () => {
    // Grgic et al. 2020, Sports Med Open 6:31.
    expect(after(0)).toBeCloseTo((0.02 + 0.04) / 2, 9);
    expect(after(-1)).toBe(after(0));
  });

  it('is known less with its age: 3 % and 4 % a year make 5 % after one year and 8.5 % after two', () => {
    // sqrt(3^2 + 4^2) = 5, sqrt(3^2 + 8^2) = 8.544
    expect(after(1)).toBeCloseTo(0.05, 9);
    expect(after(2)).toBeCloseTo(0.08544, 5);
  });
});
