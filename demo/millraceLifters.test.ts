import { describe, expect, it } from 'vitest';
import { millraceClub } from './millraceClub.ts';

const club = millraceClub('2026-11-25');

const straightBests = club.best.filter(
  ({ setup }) =>
    setup.bands.length + setup.chains.length === 0 &&
    (setup.start.way === 'free' || setup.start.way === 'paused'),
);

function mostKg(lifterId: string, lift: string, equipment: string): number {
  return Math.max(
    ...straightBests
      .filter((best) => best.lifterId === lifterId && best.lift === lift && best.equipment === equipment)
      .map(({ setup }) => setup.barKg),
  );
}

describe('the lifters', () => {
  it('are fourteen, from 150 to 197 cm and 52 to 145 kg, one of them a minor', () => {
    const statures = club.lifter.map(({ statureM }) => statureM!);
    expect([statures.length, Math.min(...statures), Math.max(...statures)]).toEqual([14, 1.5, 1.97]);
    const lastKg = club.lifter.map(({ id }) => club.bodyMass.filter((m) => m.lifterId === id).at(-1)!.massKg);
    expect(Math.min(...lastKg)).toBeCloseTo(52, -1);
    expect(Math.max(...lastKg)).toBeCloseTo(145, -1);
    expect(club.lifter.filter(({ bornOn }) => bornOn! > '2008-11-25')).toHaveLength(1);
  });

  it('two have no measured heights; the rest stand higher at lockout than at the bottom', () => {
    const measured = new Set(club.liftHeights.map(({ lifterId }) => lifterId));
    expect(measured.size).toBe(12);
    for (const { bottomM, lockoutM } of club.liftHeights) expect(lockoutM).toBeGreaterThan(bottomM);
  });

  it('a higher box never lowers the bar', () => {
    for (const { id } of club.lifter) {
      const boxes = club.liftHeights
        .filter((heights) => heights.lifterId === id && heights.start.way === 'box')
        .toSorted((p, q) => p.start.heightM! - q.start.heightM!);
      for (let i = 1; i < boxes.length; i += 1)
        expect(boxes[i]!.bottomM).toBeGreaterThan(boxes[i - 1]!.bottomM);
    }
  });

  it('squat more than they bench, in each equipment', () => {
    for (const { id, equipment } of club.lifter) {
      expect(mostKg(id, 'squat', equipment)).toBeGreaterThan(mostKg(id, 'bench', equipment));
    }
  });

  it('get no weaker in two years: no straight best is below an earlier one', () => {
    for (const best of straightBests) {
      const later = straightBests.filter(
        (other) =>
          other.lifterId === best.lifterId &&
          other.lift === best.lift &&
          other.equipment === best.equipment &&
          other.setup.start.way === best.setup.start.way &&
          other.doneOn > best.doneOn,
      );
      for (const other of later) expect(other.setup.barKg).toBeGreaterThanOrEqual(best.setup.barKg);
    }
  });
});
