import { describe, expect, it } from 'vitest';
import { prilepinTable, volumeCautions } from './prilepin.ts';

const codes = (share: number, sets: number, reps: number) =>
  volumeCautions([{ share, sets, reps }]).map(({ code }) => code);
// Printed: 30 reps from 55 %, 24 from 70, 20 from 80, 10 from 90; at most 6, 6, 4 and 2 a set.
const rows: [share: number, reps: number, aSet: number][] = [
  [0.55, 30, 6],
  [0.7, 24, 6],
  [0.8, 20, 4],
  [0.9, 10, 2],
];

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

  it('warns from the first rep beyond the upper end, and counts each zone from its printed start', () => {
    rows.forEach(([from, reps, aSet], row) => {
      const last = (rows[row + 1]?.[0] ?? 1.1) - 0.001;
      for (const share of [from, last]) {
        expect(codes(share, reps, 1)).toEqual([]);
        expect(codes(share, reps + 1, 1)).toEqual(['volume']);
        expect(codes(share, 1, aSet)).toEqual([]);
        expect(codes(share, 1, aSet + 1)).toEqual(['repsInSet']);
        // Far beyond every zone's end only one zone speaks: no share counts in two.
        expect(codes(share, 99, 1)).toEqual(['volume']);
      }
    });
    expect(codes(0.549, 99, 9)).toEqual([]);
  });
});
