import { describe, expect, it } from 'vitest';
import { cyclesSince } from './cyclesSince.ts';

const pair = { id: 'p', cycles: 1000, installedOn: '2026-01-01' };
const log = [
  { bandPairId: 'p', doneOn: '2026-09-01', reps: 30 },
  { bandPairId: 'p', doneOn: '2026-08-01', reps: 40 },
  { bandPairId: 'other', doneOn: '2026-09-01', reps: 500 },
];

describe('reps since a pair was measured', () => {
  it('are those of the log from that day on, and none of what was before the log', () => {
    expect(cyclesSince(pair, '2026-09-01', log, '2026-11-25')).toBe(30);
    expect(cyclesSince(pair, '2026-08-01', log, '2026-11-25')).toBe(70);
    expect(cyclesSince(pair, '2026-09-02', log, '2026-11-25')).toBe(0);
  });

  it('are an even share of those before the log where it was measured then', () => {
    // 1 January to 1 August are 212 days, 8 June to 1 August 54 of them.
    expect(cyclesSince(pair, '2026-06-08', log, '2026-11-25')).toBe(70 + Math.round((1000 * 54) / 212));
  });

  it('are all of them where it was never measured, or nobody knows since when it is in use', () => {
    expect(cyclesSince(pair, undefined, log, '2026-11-25')).toBe(1070);
    expect(cyclesSince({ ...pair, installedOn: null }, '2026-09-01', log, '2026-11-25')).toBe(1030);
  });

  it('go on evenly to this day where nothing is logged', () => {
    // 365 days in use, the last 73 since it was measured: a fifth.
    expect(cyclesSince(pair, '2026-10-20', [], '2027-01-01')).toBe(200);
    expect(cyclesSince(pair, '2027-01-01', [], '2027-01-01')).toBe(0);
  });
});
