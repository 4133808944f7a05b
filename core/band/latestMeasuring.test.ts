import { describe, expect, it } from 'vitest';
import { latestMeasuring } from './latestMeasuring.ts';

const look = (takenOn: string, lengthM: number) => ({ takenOn, lengthM, forceN: 200 });
const spring = [look('2026-03-01', 1.3), look('2026-03-01', 1.6), look('2026-03-20', 1.9)];

describe('the measuring that counts today', () => {
  it('is the newest that tells a curve, with all looks of the month before', () => {
    const autumn = [look('2026-10-01', 1.3), look('2026-10-02', 1.8)];
    expect(latestMeasuring([...spring, ...autumn])).toEqual(autumn);
  });

  it('stays where only a lone check was made afterwards', () => {
    expect(latestMeasuring([...spring, look('2026-11-01', 1.6)])).toEqual(spring);
  });

  it('is a lone look where there is nothing else, and nothing where nobody looked', () => {
    expect(latestMeasuring([look('2026-11-01', 1.6)])).toEqual([look('2026-11-01', 1.6)]);
    expect(latestMeasuring([])).toEqual([]);
  });

  it('reaches back a month of thirty days and no further', () => {
    // 2026-04-01 less 30 days is 2026-03-02, less 31 is 2026-03-01.
    const april = [look('2026-04-01', 1.3), look('2026-04-01', 1.6)];
    expect(latestMeasuring([...april, look('2026-03-02', 1.9)])).toHaveLength(3);
    expect(latestMeasuring([...april, look('2026-03-01', 1.9)])).toEqual(april);
  });
});
