import { describe, expect, it } from 'vitest';
import { millraceClub } from './millraceClub.ts';

const TODAY = '2026-11-25';
const club = millraceClub(TODAY);

/** What one loop of a pair pulled at a length on a date. */
function forceAt(pair: string, side: 'a' | 'b', lengthM: number, takenOn: string | undefined): number {
  return club.bandReading.find(
    (reading) =>
      reading.bandPairId === pair &&
      reading.side === side &&
      reading.direction === 'loading' &&
      reading.lengthM === lengthM &&
      reading.takenOn === takenOn,
  )!.forceN;
}

/** All forces of one loop on the way out, added up. */
function pullOf(pair: string, side: 'a' | 'b'): number {
  return club.bandReading
    .filter((r) => r.bandPairId === pair && r.side === side && r.direction === 'loading')
    .reduce((sum, r) => sum + r.forceN, 0);
}

describe('the bands', () => {
  it('29-A is softer now than when it was new, is overdue and past its counted cycles', () => {
    const pair = club.bandPair.find(({ label }) => label === '29-A')!;
    const dates = [
      ...new Set(club.bandReading.filter((r) => r.bandPairId === pair.id).map((r) => r.takenOn)),
    ].sort();
    expect(dates).toHaveLength(2);
    for (const side of ['a', 'b'] as const) {
      const left = forceAt(pair.id, side, 2.25, dates[1]) / forceAt(pair.id, side, 2.25, dates[0]);
      expect(left).toBeGreaterThan(0.84);
      expect(left).toBeLessThan(0.92);
    }
    const ageDays = (Date.parse(TODAY) - Date.parse(dates[1]!)) / 86_400_000;
    expect(ageDays).toBeGreaterThan(club.club[0]!.remeasureAfterDays);
    expect(pair.cycles).toBeGreaterThan(club.club[0]!.remeasureAfterCycles);
  });

  it('only 45-A is a pair whose loops differ by more than the club allows, and 13-B was never measured', () => {
    const measured = club.bandPair.filter(({ id }) => club.bandReading.some((r) => r.bandPairId === id));
    expect(club.bandPair.filter((pair) => !measured.includes(pair)).map(({ label }) => label)).toEqual([
      '13-B',
    ]);
    const mismatched = measured.filter(({ id }) => {
      return Math.abs(pullOf(id, 'a') / pullOf(id, 'b') - 1) > club.club[0]!.pairMismatchShare;
    });
    expect(mismatched.map(({ label }) => label)).toEqual(['45-A']);
  });

  it('pull harder the longer they are drawn, and less on the way back', () => {
    for (const { id } of club.bandPair) {
      for (const side of ['a', 'b'] as const) {
        const taken = club.bandReading.filter((r) => r.bandPairId === id && r.side === side);
        const newest = taken.filter((r) => r.takenOn === taken.at(-1)!.takenOn);
        const out = newest.filter((r) => r.direction === 'loading').toSorted((p, q) => p.lengthM - q.lengthM);
        for (let i = 1; i < out.length; i += 1) expect(out[i]!.forceN).toBeGreaterThan(out[i - 1]!.forceN);
        for (const back of newest.filter((r) => r.direction === 'unloading')) {
          const next = out.find((r) => r.lengthM >= back.lengthM)!;
          expect(back.forceN).toBeLessThan(next.forceN);
        }
      }
    }
  });

  /**
   * Tension per mm of width and of thickness (N/mm2) of a gum rubber loop at stretch 2: 1.209, from a Yeoh fit to
   * Kawabata et al. 1981; level good to 25 % for a band of unknown compound. Thickness 4.5 mm: common practice.
   */
  it('have the level of gum rubber at about twice their length', () => {
    for (const { id, widthMm } of club.bandPair.filter(({ label }) => label !== '13-B')) {
      const near = club.bandReading
        .filter((r) => r.bandPairId === id && r.direction === 'loading')
        .toSorted((p, q) => Math.abs(p.lengthM - 2.08) - Math.abs(q.lengthM - 2.08))[0]!;
      const perMm2 = near.forceN / (widthMm * 4.5);
      expect(perMm2).toBeGreaterThan(0.75 * 1.209);
      expect(perMm2).toBeLessThan(1.25 * 1.209);
    }
  });
});
