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
    const lastLook = [...taken('2028-02-20', 200), ...taken('2028-02-28', 200, [1.6])];
    for (const readings of [taken('2028-02-28', 200), lastLook])
      expect(found({ readings }, '2028-08-27')).toEqual([{ why: 'age', days: 181, allowed: 180 }]);
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
    // A loop of 0.8 m may be pulled to 2 m.
    const short = (longestM: number) =>
      found({ restLengthM: 0.8, readings: taken('2026-11-01', 200, [1.2, 1.5, 1.8, longestM]) });
    expect(short(2)).toEqual([]);
    expect(short(2.4)).toEqual([{ why: 'overstretched', stretch: expect.closeTo(3, 12), allowed: 2.5 }]);
  });

  it('questions a force of the newest measuring that falls, and none of one before it', () => {
    const slip = (takenOn: string) => [
      ...taken(takenOn, 200, [1.2, 1.5]),
      { takenOn, lengthM: 1.8, forceN: 60, direction: 'loading' as const },
    ];
    expect(found({ readings: slip('2026-11-01') })).toEqual([
      {
        why: 'fallingForce',
        restLengthM: 1,
        direction: 'loading',
        // A neo-Hookean loop of 200 N: 200 (1.5 - 1 / 2.25) N.
        shorter: { lengthM: 1.5, forceN: expect.closeTo(211.111, 3) },
        longer: { lengthM: 1.8, forceN: 60 },
      },
    ]);
    const whys = found({ readings: [...slip('2026-01-10'), ...taken('2026-11-01', 200)] }).map(
      ({ why }) => why,
    );
    expect(whys).not.toContain('fallingForce');
  });
});
