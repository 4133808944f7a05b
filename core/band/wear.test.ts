import { describe, expect, it } from 'vitest';
import { bandForm } from './bandForms.ts';
import { type BandHistory, type WearLimits, wear } from './wear.ts';

const LIMITS: WearLimits = { afterDays: 180, afterCycles: 5000, driftShare: 0.05, safeStretchRatio: 2.5 };
const TODAY = '2026-11-25';

function taken(takenOn: string, muN: number, stretches = [1.2, 1.5, 1.8, 2.1]): BandHistory['readings'] {
  const force = bandForm('neoHookean').force([muN]);
  return stretches.map((lambda) => ({
    takenOn,
    lengthM: lambda,
    forceN: force(lambda),
    direction: 'loading',
  }));
}

function found(history: Partial<BandHistory>, today = TODAY) {
  const band = { restLengthM: 1, widthMm: 40, readings: [], cyclesSinceMeasured: 0 };
  return wear({ ...band, ...history }, LIMITS, today);
}

describe('wear', () => {
  it('has nothing to say of a band measured lately and used within limits', () => {
    const readings = taken('2026-10-01', 200, [1.2, 1.5, 1.8, 2.5]);
    expect(found({ readings, cyclesSinceMeasured: 5000 })).toEqual([]);
  });

  it('tells a band that nobody measured', () => {
    expect(found({})).toEqual([{ why: 'neverMeasured' }]);
    expect(found({ readings: taken('2026-11-01', 200, [1.5]) })).toEqual([{ why: 'neverMeasured' }]);
  });

  it('counts whole days across a change of clocks and a leap day', () => {
    // 2028-02-28 to 2028-08-27: 181 days, 29 February between them.
    expect(found({ readings: taken('2028-02-28', 200) }, '2028-08-26')).toEqual([]);
    expect(found({ readings: taken('2028-02-28', 200) }, '2028-08-27')).toEqual([
      { why: 'age', days: 181, allowed: 180 },
    ]);
  });

  it('tells when the reps since measuring pass what is allowed', () => {
    expect(found({ readings: taken('2026-11-01', 200), cyclesSinceMeasured: 5001 })).toEqual([
      { why: 'cycles', cycles: 5001, allowed: 5000 },
    ]);
  });

  it('tells a band that has softened between two measurings, by how much', () => {
    const [finding, ...more] = found({
      readings: [...taken('2026-11-01', 180), ...taken('2026-01-10', 200)],
    });
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ why: 'drift', fromDate: '2026-01-10', toDate: '2026-11-01' });
    // 180 against 200 at every length: 2 (180 - 200) / (180 + 200).
    expect((finding as { share: number }).share).toBeCloseTo(-40 / 380, 6);
    expect(found({ readings: [...taken('2026-11-01', 195), ...taken('2026-01-10', 200)] })).toEqual([]);
  });

  it('tells a reading beyond the safe ratio', () => {
    expect(found({ readings: taken('2026-11-01', 200, [1.5, 2, 2.75]) })).toEqual([
      { why: 'overstretched', stretch: 2.75, allowed: 2.5 },
    ]);
  });
});
