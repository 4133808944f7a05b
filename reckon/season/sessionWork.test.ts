import { describe, expect, it } from 'vitest';
import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { solveDay } from '#reckon/day/solveDay.ts';
import { workAhead } from './workAhead.ts';
import { workOfPlace } from './workOfPlace.ts';
import { workOfSet } from './workOfSet.ts';

const records = twoLifters();
const G = 9.80665;
const free = { way: 'free' as const, heightM: null };
/** The short lifter's squat: measured, from 0.72 to 1.20 m. */
const [BOTTOM_M, LOCKOUT_M] = [0.72, 1.2];
const WAY_M = LOCKOUT_M - BOTTOM_M;

/**
 * Pull of a doubled pair from pegs at 0.2 m over the way, tabled by the statistical theory of rubber, f = k (x - x^-2) (Treloar 1943; the readings of
 * these bands lie on it), and integrated by the trapezoid rule. Each of the two loops pulls with four legs' worth of half its tension.
 */
function bandWorkJ(stiffnessN: number): number {
  const steps = 400;
  const pullN = (zM: number) => {
    const stretch = Math.max(1, (2 * (zM - 0.2)) / 1.04);
    return 4 * stiffnessN * (stretch - stretch ** -2);
  };
  const table = Array.from({ length: steps + 1 }, (_, at) => pullN(BOTTOM_M + (at * WAY_M) / steps));
  return table.slice(1).reduce((sum, forceN, at) => sum + (((forceN + table[at]!) / 2) * WAY_M) / steps, 0);
}
const stiffnessOf: Readonly<Record<string, number>> = { light: 40, heavy: 90 };

describe('work', () => {
  it('of a logged set is weight times way, and the area under what the bands pull, for each rep that was made', () => {
    const setup = { rackId: 'rack', start: free, barKg: 60, chains: [], bands: [] };
    const set = { lifterId: 'short', lift: 'squat' as const, doneOn: '2026-02-01', made: 3, setup };
    expect(workOfSet(records, set)).toMatchObject({ liftedKg: 180, underBarS: null });
    expect(workOfSet(records, set)!.workJ).toBeCloseTo(3 * 60 * G * WAY_M, 6);
    const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
    const banded = workOfSet(records, { ...set, setup: { ...setup, bands } })!;
    expect(banded.liftedKg).toBe(180);
    expect(banded.workJ / (3 * (60 * G * WAY_M + bandWorkJ(90)))).toBeCloseTo(1, 4);
    expect(workOfSet({ ...records, liftHeights: [], lifter: [] }, set)).toBeNull();
  });

  it('of a place that was worked out is the same of each of its steps, with the bands that it was given', () => {
    const { solved } = solveDay(records, records.day[0]!).groups[0]!.places[0]!;
    expect(solved!.set.bands.length).toBeGreaterThan(0);
    const pairsJ = solved!.set.bands.reduce((sum, { label }) => sum + bandWorkJ(stiffnessOf[label]!), 0);
    const expectedJ = solved!.blocks.reduce(
      (sum, { sets, reps, barKg }) => sum + sets * reps * (barKg * G * WAY_M + pairsJ),
      0,
    );
    const work = workOfPlace(solved!);
    expect(work.workJ / expectedJ).toBeCloseTo(1, 4);
    const tonnageKg = solved!.blocks.reduce((sum, { sets, reps, barKg }) => sum + sets * reps * barKg, 0);
    expect(work.liftedKg).toBeCloseTo(tonnageKg, 9);
    // 16 ways up and down: no squat of a speed day takes less than half a second up, nor two.
    expect(work.underBarS! / 16).toBeGreaterThan(0.5 + 1.2);
    expect(work.underBarS! / 16).toBeLessThan(2 + 1.2);
  });

  it('of a group ahead goes by shares of the maximum: the bar steps, the bands hang on all steps', () => {
    const group = {
      lift: 'squat',
      start: free,
      lockoutShare: 0.8,
      meanShare: 0.7,
      bandShare: 0.3,
      blocks: [
        { sets: 1, reps: 4, restSeconds: 60, shareOfAim: 0.5 },
        { sets: 5, reps: 2, restSeconds: 60, shareOfAim: 1 },
      ],
    } as unknown as GroupOfLifter;
    // Her best is 110 kg straight; the bands hold 0.2 of it on average over the way.
    const ahead = workAhead(records, 'short', group, '2026-02-01')!;
    expect(ahead.liftedKg).toBeCloseTo(4 * 0.25 * 110 + 10 * 0.5 * 110, 6);
    expect(ahead.workJ).toBeCloseTo((4 * (0.25 + 0.2) + 10 * (0.5 + 0.2)) * 110 * G * WAY_M, 6);
    expect(ahead.underBarS! / 14).toBeGreaterThan(0.5 + 1.2);
    expect(workAhead({ ...records, liftHeights: [], lifter: [] }, 'short', group, '2026-02-01')).toBeNull();
    const bySpeed = { ...group, lockoutShare: null, meanShare: null };
    expect(workAhead(records, 'short', bySpeed, '2026-02-01')).toBeNull();
  });
});
