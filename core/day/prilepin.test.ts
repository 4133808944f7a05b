import { describe, expect, it } from 'vitest';
import { prilepinTable, volumeCautions } from './prilepin.ts';

describe('prilepin', () => {
  it('holds the printed rows', () => {
    // Three secondary printings of the table in Laputin & Oleshko 1982 agree on these counts.
    expect(prilepinTable.map((zone) => [...zone.repsASet, zone.bestReps, ...zone.reps])).toEqual([
      [3, 6, 24, 18, 30],
      [3, 6, 18, 12, 24],
      [2, 4, 15, 10, 20],
      [1, 2, 7, 4, 10],
    ]);
  });

  it('warns of a set and a session that go beyond the upper end, in their own zone', () => {
    expect(volumeCautions([{ share: 0.6, sets: 10, reps: 2 }])).toEqual([]);
    expect(volumeCautions([{ share: 0.6, sets: 10, reps: 4 }])).toEqual([
      { code: 'volume', reps: 40, mostReps: 30, zoneFrom: 0.55, zoneTo: 0.7 },
    ]);
    expect(volumeCautions([{ share: 0.9, sets: 1, reps: 3 }])).toEqual([
      { code: 'repsInSet', reps: 3, mostReps: 2, zoneFrom: 0.9, zoneTo: null },
    ]);
    expect(volumeCautions([{ share: 0.4, sets: 20, reps: 10 }])).toEqual([]);
  });
});
